using Handwheel.Jobs.Moves;
using Handwheel.Quantities;

namespace Handwheel.Proof.Tests.Crank;

/// <summary>Writes a course by hand, reading by reading, as no plan did.</summary>
internal sealed class CourseBuilder
{
    private readonly List<CourseStage> stages = [];
    private List<CourseStep> steps = [];
    private List<CourseEvent> events = [];
    private Reading at;
    private int number;

    public CourseBuilder Holding(string name, SetupFacts? setup)
    {
        steps = [];
        stages.Add(new CourseStage { Name = name, Setup = setup, Steps = steps });
        return this;
    }

    public CourseBuilder Step(string id, string text)
    {
        events = [];
        steps.Add(new CourseStep { Id = id, Text = text, Events = events });
        return this;
    }

    public CourseBuilder In(string cutter)
    {
        events.Add(new CutterIn(cutter, 900));
        return this;
    }

    public CourseBuilder Put(CutterIn cutter)
    {
        events.Add(cutter);
        return this;
    }

    public CourseBuilder Touch(TouchOff touch)
    {
        events.Add(touch);
        return this;
    }

    public CourseBuilder TouchZ(string with, double x, double y, double setTo, string surface = "bar top") =>
        Touch(new TouchOff { Axis = Axis.Z, On = "metal", Surface = surface, At = new Place3(x, y, 0), With = with, Paper = 0.05, SetTo = setTo });

    public CourseBuilder Centre()
    {
        foreach (var axis in new[] { Axis.X, Axis.Y })
        {
            Touch(new TouchOff { Axis = axis, On = "rotary centre", Surface = "rotary centre", At = default, With = "indicator", SetTo = 0 });
        }

        return this;
    }

    public CourseBuilder Free(double? x = null, double? y = null, double? z = null, double? t = null) => Go(x, y, z, t, cutting: false);

    public CourseBuilder Cut(double? x = null, double? y = null, double? z = null, double? t = null) => Go(x, y, z, t, cutting: true);

    public CourseBuilder Hand(Handwork hand)
    {
        events.Add(hand);
        return this;
    }

    /// <summary>Theta turned on by so many degrees.</summary>
    public double Turn(double by) => at.T + by;

    /// <summary>The angle on the rotary's rim, come to by turning clockwise.</summary>
    public double Full(double angle)
    {
        var turns = Math.Floor((at.T - angle) / 360);
        return angle + (360 * turns);
    }

    public Course Build(string? releaseAt) => new() { Title = "Winch crank", Unit = LengthUnit.Millimetre, Stages = stages, ReleaseAt = releaseAt };

    private CourseBuilder Go(double? x, double? y, double? z, double? t, bool cutting)
    {
        at = new Reading(x ?? at.X, y ?? at.Y, z ?? at.Z, t ?? at.T);
        events.Add(new Move { Number = ++number, To = at, Cutting = cutting, Feed = cutting ? 50 : 0, Locked = [Axis.X, Axis.Y, Axis.T] });
        return this;
    }
}
