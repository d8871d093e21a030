using System.Globalization;
using System.Text.Json.Nodes;

namespace Handwheel.Trade.Tests.Known;

/// <summary>
/// Every known value, worked out by the library and compared within the tolerance its source needs. Each case's name carries its source and evidence.
/// </summary>
public sealed class KnownValuesTests
{
    public static TheoryData<int, string> Cases()
    {
        var data = new TheoryData<int, string>();
        for (var i = 0; i < KnownValues.All.Count; i++)
        {
            var k = KnownValues.All[i];
            data.Add(i, $"{k.Statement} [{k.Source}; {k.Evidence}]");
        }

        return data;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Agrees_with_its_source(int index, string what)
    {
        Assert.NotEmpty(what);
        var known = KnownValues.All[index];
        Assert.NotEmpty(known.Source);
        Assert.Contains(known.Evidence, new[] { "read", "computed", "memory" });
        var worked = known.Area switch
        {
            "1 threads" => KnownThreads.Work(known),
            "2 drills" => KnownThreads.Drill(known),
            "3 three-wire" => KnownThreads.Wires(known),
            "4 tapers" => KnownTapers.Work(known),
            "5 indexing" => KnownIndexing.Work(known),
            "6 geometry" => KnownGeometry.Work(known),
            "7 fits" => KnownFits.Work(known),
            "8 cutting" => KnownCutting.Work(known),
            "9 bolted" => KnownJoints.Work(known),
            "10 mechanics" => KnownStrength.Work(known),
            "11 uncertainty" => KnownStrength.Stack(known),
            _ => null,
        };
        Assert.True(worked is not null, $"nothing works out '{known.Statement}'");
        Compare(known, known.Expected, worked!, string.Empty);
    }

    [Fact]
    public void Nothing_is_left_out() => Assert.True(KnownValues.All.Count >= 300, KnownValues.All.Count.ToString(CultureInfo.InvariantCulture));

    private static void Compare(KnownValue known, JsonNode expected, object worked, string path)
    {
        switch (expected)
        {
            case JsonObject o:
                var map = Assert.IsType<IReadOnlyDictionary<string, object>>(worked, exactMatch: false);
                if (path == "options")
                {
                    Assert.Equal(o.Select(p => p.Key).Order(StringComparer.Ordinal), map.Keys.Order(StringComparer.Ordinal));
                }

                foreach (var (name, value) in o)
                {
                    Assert.True(map.ContainsKey(name), $"'{name}' of '{known.Statement}' is not worked out");
                    Compare(known, value!, map[name], name);
                }

                break;
            case JsonArray a:
                var list = ((System.Collections.IEnumerable)worked).Cast<object>().ToArray();
                Assert.Equal(a.Count, list.Length);
                for (var i = 0; i < list.Length; i++)
                {
                    Compare(known, a[i]!, list[i], path);
                }

                break;
            default:
                Scalar(known, expected.AsValue(), worked, path);
                break;
        }
    }

    private static void Scalar(KnownValue known, JsonValue expected, object worked, string path)
    {
        if (expected.TryGetValue<bool>(out var truth))
        {
            Assert.Equal(truth, worked);
            return;
        }

        if (expected.TryGetValue<string>(out var word))
        {
            Assert.Equal(word, worked);
            return;
        }

        var wanted = expected.GetValue<double>();
        var got = Convert.ToDouble(worked, CultureInfo.InvariantCulture);
        var type = known.Tolerance["type"]!.GetValue<string>();
        var short_ = path.Split('_')[0];
        var tolerance = type == "exact" ? 0
            : (known.Tolerance[path] ?? known.Tolerance[short_] ?? (path.StartsWith('u') && path.Length > 1 ? known.Tolerance["u"] : null) ?? known.Tolerance["value"])!.GetValue<double>();
        var band = type == "rel" ? tolerance * Math.Abs(wanted) : tolerance;
        Assert.True(
            Math.Abs(got - wanted) <= band + 1e-9,
            string.Create(CultureInfo.InvariantCulture, $"{known.Statement}: {path} is {got}, the source has {wanted} +/- {band}"));
    }
}
