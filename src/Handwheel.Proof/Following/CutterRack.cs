using Handwheel.Jobs.Shops;
using Handwheel.Solids.Cuts;
using Handwheel.Solids.Cutters;
using Handwheel.Solids.Soundings;

namespace Handwheel.Proof.Following;

/// <summary>The shop&#39;s cutters as solids, each made once.</summary>
/// <param name="shop">The shop.</param>
internal sealed class CutterRack(Shop shop)
{
    private readonly Dictionary<(string Name, double Across), CutterShape?> shapes = [];

    /// <summary>A cutter&#39;s solid.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="across">The diameter a boring head is set to, millimetres; 0: as the shop has it.</param>
    /// <returns>The solid; null for a broach or where the shop does not have it.</returns>
    public CutterShape? Shape(string? name, double across = 0)
    {
        if (name is null)
        {
            return null;
        }

        if (!shapes.TryGetValue((name, across), out var shape))
        {
            shape = Cutter(name, across) is { } cutter && CutterShapes.Turns(cutter) ? CutterShapes.Of(cutter, shop.Mill) : null;
            shapes.Add((name, across), shape);
        }

        return shape;
    }

    /// <summary>A cutter as it is put in.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="across">The diameter a boring head is set to, millimetres; 0: as the shop has it.</param>
    /// <returns>The cutter; null where the shop does not have it.</returns>
    public Cutter? Cutter(string name, double across) => shop.Cutters.GetValueOrDefault(name) is { } cutter ? CutterShapes.SetTo(cutter, across) : null;

    /// <summary>What a cutter takes on one piece of a move.</summary>
    /// <param name="shape">The cutter.</param>
    /// <param name="leg">The piece.</param>
    /// <returns>The volume, part frame; null where nothing of the cutter cuts.</returns>
    public static ISolid? Cut(CutterShape shape, Leg leg) =>
        shape.Pieces.Any(p => p.Cuts) ? new SweptCut(shape, leg.Path, leg.ToPart) : null;
}
