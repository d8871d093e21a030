namespace Handwheel.Trade.Indexing;

/// <summary>A division by two moves on two circles of one plate.</summary>
/// <param name="FirstCircle">Circle the crank pin stands in.</param>
/// <param name="FirstSpaces">Spaces moved by the crank; positive is clockwise.</param>
/// <param name="SecondCircle">Circle the plate's stop pin stands in.</param>
/// <param name="SecondSpaces">Spaces the plate is then turned with the crank; negative is the other way.</param>
/// <param name="Rounds">How many divisions are skipped each time: the sum is the ratio times this, over the divisions.</param>
/// <param name="ErrorTurns">Crank turns reached minus wanted; 0 where exact.</param>
public readonly record struct CompoundIndexing(int FirstCircle, int FirstSpaces, int SecondCircle, int SecondSpaces, int Rounds, double ErrorTurns);
