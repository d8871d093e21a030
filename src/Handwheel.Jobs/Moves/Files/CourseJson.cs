using System.Text.Json.Serialization;

namespace Handwheel.Jobs.Moves.Files;

/// <summary>The moves file&#39;s reader and writer, made at compile time (no reflection).</summary>
[JsonSourceGenerationOptions(
    AllowDuplicateProperties = false,
    AllowOutOfOrderMetadataProperties = true,
    Converters = [typeof(FiniteNumberConverter), typeof(AxisConverter), typeof(LengthUnitConverter)],
    IndentSize = 1,
    MaxDepth = 32,
    NewLine = "\n",
    PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase,
    RespectNullableAnnotations = true,
    RespectRequiredConstructorParameters = true,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
    WriteIndented = true)]
[JsonSerializable(typeof(CourseDocument))]
internal sealed partial class CourseJson : JsonSerializerContext;
