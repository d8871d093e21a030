using System.Text.Json.Serialization;

namespace Handwheel.Jobs.Moves;

/// <summary>One thing that happens in a step.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "event", UnknownDerivedTypeHandling = JsonUnknownDerivedTypeHandling.FailSerialization)]
[JsonDerivedType(typeof(CutterIn), "cutter")]
[JsonDerivedType(typeof(HeadOpened), "head")]
[JsonDerivedType(typeof(Spindle), "spindle")]
[JsonDerivedType(typeof(TouchOff), "touch-off")]
[JsonDerivedType(typeof(Move), "move")]
[JsonDerivedType(typeof(Measured), "measured")]
[JsonDerivedType(typeof(Handwork), "hand")]
public abstract record CourseEvent
{
    private protected CourseEvent()
    {
    }
}
