using System.Globalization;

namespace Handwheel.Cases.Tests.Variations;

/// <summary>Winch cranks of other sizes, drawn by a seed: as the example, pointing the other way, mirrored (sawn from the far side), or with the arm at an angle.</summary>
internal static class Variation
{
    public static string Text(int seed)
    {
        var random = new Random(seed);
        double Pick(double least, double most) => Math.Round(least + ((most - least) * random.NextDouble()), 1);
        var (hub, eye, reach) = (Pick(9.5, 12), Pick(7, 9), Pick(24, 30));
        var (high, arm) = (Pick(11, 12), Pick(3.5, 4.2));
        var angle = (seed % 4) switch { 1 => 180, 3 => Pick(-5, 5), _ => 0 };
        var mirrored = seed % 4 == 2;
        var (x, y) = (reach * Math.Cos(angle * Math.PI / 180), reach * Math.Sin(angle * Math.PI / 180));
        var (from, to) = (Math.Min(-hub / 2, x - (eye / 2)) - 4, Math.Max(hub / 2, x + (eye / 2)) + 4);
        var wide = Math.Ceiling(Math.Max(hub, (2 * Math.Abs(y)) + eye)) + 2;
        var (side, web) = mirrored ? ("far", "near") : ("near", "far");
        return string.Create(CultureInfo.InvariantCulture, $"""
            job   Winch crank, variation {seed}
            unit  mm
            metal brass, free-cutting
            shop  home.handwheel

            drawing
              hub     round {hub} at 0, 0         from -{high} to 0
              eye     round {eye} at ({reach} * cos({angle})), ({reach} * sin({angle}))   from -{high} to -{high - arm:F1}
              arm     tangent to hub and eye      from -{high} to -{high - arm:F1}
              pilot   cut round 4 at hub          through
              socket  cut square 4 at hub         from -6 to 0, sides along x
              pin     cut round 3 H8 at eye       through
              size    hub across                  {hub} +0 -0.05
              size    arm high                    {arm} +/-0.05
              size    socket across flats         4 +0.08 -0.02
              others  +/-0.1

            stock bar {wide:F0} wide, 30 high, {to - from:F1} long
              x from {from:F1}
              z top 0.5

            holding A in small vise on rotary, bar along jaws on parallels 6, jaws at -19
              zero x, y on rotary centre
              zero z on bar top by paper 0.05
              face to 0 with em10
              spot hub, pin
              drill pilot through with d4
              drill pin to -14.5 with d2.9
              ream pin through with r3
              face arm to -{high - arm:F1} with em10, 1.0 a pass, 0.3 clear of hub, from the bar's end
              round hub to -{high - arm:F1} with em10, 1.0 a pass, allow 0.2
              measure hub across, then last pass at full depth
              round hub end of arm to -13.4 with em10, 1.0 a pass
              side arm, both flanks, to -13.4 with em10, 1.0 a pass
            by hand
              press socket with sq4, square to the bar's side
              run d4 through again
            holding B in small vise on rotary, bar slid along the jaw on parallels 6, jaws at -19
              zero x, y at pin on rotary centre
              zero z on hub top by paper 0.05
              round eye end of arm to -13.4 with em10, 1.0 a pass
              saw under arm with saw1, from {side} side, web 0.3 along {web} flank, allow 0.1
            by hand
              break the web, file to the line
              rub underside to arm high
              break all edges 0.2

            """);
    }
}
