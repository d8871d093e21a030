using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Handwheel.Jobs.Moves.Files;

/// <summary>Numbers of a moves file: finite, no greater than any machine; shortest text that reads back to the same bits.</summary>
internal sealed class FiniteNumberConverter : JsonConverter<double>
{
    /// <summary>The greatest magnitude accepted, millimetres, degrees or turns a minute.</summary>
    public const double Greatest = 1e6;

    /// <inheritdoc/>
    /// <exception cref="JsonException">No number, or one beyond any machine.</exception>
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType != JsonTokenType.Number)
        {
            throw new JsonException("a number was expected, without quotes");
        }

        var value = reader.GetDouble();
        return Math.Abs(value) <= Greatest
            ? value
            : throw new JsonException(string.Create(CultureInfo.InvariantCulture, $"{value:R} is beyond any machine; numbers lie within +/-{Greatest:F0}"));
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
}
