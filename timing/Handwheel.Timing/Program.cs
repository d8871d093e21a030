using System.Globalization;
using Handwheel.Timing;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var what = args.FirstOrDefault() ?? "all";
if (what is "all" or "job")
{
    Bench.Job(300, peer: true);
}

if (what is "all" or "long")
{
    Bench.Job(5000, peer: !args.Contains("--no-peer"));
}

if (what is "quick")
{
    Bench.Job(300, peer: false);
    Bench.Job(5000, peer: false);
}

if (what is "all" or "growth")
{
    Growth.Run(args.ElementAtOrDefault(1));
}

if (what is "all" or "sound")
{
    Bench.Sounding();
}

if (what is "kinds")
{
    Profile.Kinds();
}

if (what is "oracle")
{
    Bench.Oracle(args.Length > 1 ? int.Parse(args[1]) : 1_000_000);
}

if (what is "intervals")
{
    Bench.Intervals(args.Length > 1 ? int.Parse(args[1]) : 1_000_000);
}

if (what is "spin")
{
    Profile.Spin(args[1], int.Parse(args[2]), int.Parse(args[3]));
}
