using System.Text.Json;
using System.Text.Json.Serialization;

namespace Handwheel.Jobs.Moves.Files;

/// <summary>An axis as <c>x</c>, <c>y</c>, <c>z</c> or <c>t</c>.</summary>
internal sealed class AxisConverter : JsonConverter<Axis>
{
    /// <inheritdoc/>
    /// <exception cref="JsonException">Any other text.</exception>
    public override Axis Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
        return text switch
        {
            "x" => Axis.X,
            "y" => Axis.Y,
            "z" => Axis.Z,
            "t" => Axis.T,
            _ => throw new JsonException("an axis was expected: \"x\", \"y\", \"z\" or \"t\""),
        };
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Axis value, JsonSerializerOptions options) => writer.WriteStringValue(value switch
    {
        Axis.X => "x",
        Axis.Y => "y",
        Axis.Z => "z",
        _ => "t",
    });
}
