using System.Text.Json;
using System.Text.Json.Serialization;
using Handwheel.Quantities;

namespace Handwheel.Jobs.Moves.Files;

/// <summary>The unit findings speak, as <c>mm</c> or <c>in</c>; every number of the file is millimetres all the same.</summary>
internal sealed class LengthUnitConverter : JsonConverter<LengthUnit>
{
    /// <inheritdoc/>
    /// <exception cref="JsonException">Any other text.</exception>
    public override LengthUnit Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = reader.TokenType == JsonTokenType.String ? reader.GetString() : null;
        return text switch
        {
            "mm" => LengthUnit.Millimetre,
            "in" => LengthUnit.Inch,
            _ => throw new JsonException("a unit was expected: \"mm\" or \"in\""),
        };
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, LengthUnit value, JsonSerializerOptions options) => writer.WriteStringValue(value.Symbol());
}
