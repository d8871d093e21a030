using Handwheel.Jobs.Documents;
using Handwheel.Jobs.Drawings;

namespace Handwheel.Jobs.Reading;

// A feature's line as it stood, before its sums are worked out. Filled by the drawing's reader, then only read.
internal sealed class FeatureDraft(string name, SourceSpan where, SourceSpan nameWhere)
{
    /// <summary>Its name.</summary>
    public string Name { get; } = name;

    /// <summary>Its line.</summary>
    public SourceSpan Where { get; } = where;

    /// <summary>Its name's place.</summary>
    public SourceSpan NameWhere { get; } = nameWhere;

    /// <summary>Whether its line could not be read whole; what needs it is then left without a finding.</summary>
    public bool Broken { get; set; }

    /// <summary>Whether it takes metal away.</summary>
    public bool IsCut { get; set; }

    /// <summary>Its form.</summary>
    public ShapeForm Shape { get; set; }

    /// <summary>Sides of a polygon.</summary>
    public int Sides { get; set; }

    /// <summary>Whether a polygon was given across its corners.</summary>
    public bool OverCorners { get; set; }

    /// <summary>What was typed for each measure.</summary>
    public Dictionary<Measure, (TypedNumber Number, LimitsDraft? Limits)> Typed { get; } = [];

    /// <summary>A feature it stands at.</summary>
    public FeatureDraft? At { get; set; }

    /// <summary>The rounds of a tangent outline, as words to look up.</summary>
    public (FeatureDraft First, FeatureDraft Second)? Rounds { get; set; }

    /// <summary>Points of an outline.</summary>
    public List<CornerDraft> Corners { get; } = [];

    /// <summary>A curved slot's width, the diameter of its middle line, and the angles of its ends.</summary>
    public (TypedNumber Wide, TypedNumber Circle, TypedNumber From, TypedNumber To)? Curve { get; set; }

    /// <summary>How far it is turned.</summary>
    public TypedNumber? Turn { get; set; }

    /// <summary>Degrees its sides or length are turned by a word: <c>along y</c>.</summary>
    public double TurnByWord { get; set; }

    /// <summary>Whether it goes right through.</summary>
    public bool Through { get; set; }

    /// <summary>The side it is drawn from.</summary>
    public View View { get; set; }

    /// <summary>Whether it is seen from the far side of its view.</summary>
    public bool Behind { get; set; }

    /// <summary>Included angle of its bottom or of a countersink.</summary>
    public TypedNumber? Point { get; set; }

    /// <summary>Its thread as typed.</summary>
    public string? Thread { get; set; }

    /// <summary>Radius of a block&#39;s corners.</summary>
    public TypedNumber? CornerRadius { get; set; }

    /// <summary>Leg of the chamfer round its ends.</summary>
    public TypedNumber? Chamfer { get; set; }

    /// <summary>Which ends are chamfered: the one that faces the viewer, the other.</summary>
    public (bool Above, bool Below) Chamfered { get; set; }

    /// <summary>Its repeat.</summary>
    public RepeatDraft? Repeat { get; set; }

    /// <summary>Whether it is mirrored across plan X, plan Y.</summary>
    public (bool AcrossX, bool AcrossY) Mirrored { get; set; }
}
