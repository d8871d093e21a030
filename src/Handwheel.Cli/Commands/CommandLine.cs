using System.CommandLine;

namespace Handwheel.Cli.Commands;

/// <summary>The words typed after <c>handwheel</c>, read and sent to their command.</summary>
internal static class CommandLine
{
    private static readonly string[] Names = ["check", "sheet", "why", "tidy", "ask"];

    /// <summary>Runs what was typed.</summary>
    /// <param name="args">The words.</param>
    /// <param name="shell">Where it speaks.</param>
    /// <returns>The exit code.</returns>
    public static int Run(string[] args, Shell shell)
    {
        try
        {
            return Choose(args, shell);
        }
        catch (RefusedException refused)
        {
            shell.Error.WriteLine("handwheel: " + refused.Message);
            return 2;
        }
    }

    private static int Choose(string[] args, Shell shell)
    {
        if (args.Length == 0 || args[0] is "--help" or "-h" or "help")
        {
            shell.Out.WriteLine(Usage.Of(args.Length > 1 ? args[1] : string.Empty));
            return args.Length == 0 ? 2 : 0;
        }

        if (args[0] is "--version")
        {
            shell.Out.WriteLine("handwheel " + (typeof(CommandLine).Assembly.GetName().Version?.ToString(3) ?? "0"));
            return 0;
        }

        if (Array.IndexOf(Names, args[0]) < 0)
        {
            throw new RefusedException($"'{args[0]}' is no command; known are {string.Join(", ", Names)}");
        }

        if (args.Skip(1).Any(a => a is "--help" or "-h"))
        {
            shell.Out.WriteLine(Usage.Of(args[0]));
            return 0;
        }

        return args[0] switch
        {
            "check" => Check(args, shell),
            "sheet" => Sheet(args, shell),
            "why" => Why(args, shell),
            "tidy" => TidyUp(args, shell),
            _ => AskCommand.Run([.. args.Skip(1).Where(a => a != "--json")], args.Contains("--json", StringComparer.Ordinal), shell.Out, shell.Error),
        };
    }

    private static int Check(string[] args, Shell shell)
    {
        var job = new Argument<string?>("JOB") { Arity = ArgumentArity.ZeroOrOne };
        var (moves, write, json, progress) = (new Option<string?>("--moves"), new Option<string?>("--write-moves"), new Option<bool>("--json"), new Option<bool>("--progress"));
        var parsed = Parsed(new Command("check") { job, moves, write, json, progress }, args);
        return CheckCommand.Run(shell, parsed.GetValue(job), parsed.GetValue(moves), parsed.GetValue(write), parsed.GetValue(json), parsed.GetValue(progress));
    }

    private static int Sheet(string[] args, Shell shell)
    {
        var job = new Argument<string>("JOB");
        var (file, json, progress) = (new Option<string>("-o", "--output") { Required = true }, new Option<bool>("--json"), new Option<bool>("--progress"));
        var parsed = Parsed(new Command("sheet") { job, file, json, progress }, args);
        return SheetCommand.Run(shell, parsed.GetValue(job)!, parsed.GetValue(file)!, parsed.GetValue(json), parsed.GetValue(progress));
    }

    private static int Why(string[] args, Shell shell)
    {
        var (job, step, json) = (new Argument<string>("JOB"), new Argument<string>("STEP"), new Option<bool>("--json"));
        var parsed = Parsed(new Command("why") { job, step, json }, args);
        return WhyCommand.Run(shell, parsed.GetValue(job)!, parsed.GetValue(step)!, parsed.GetValue(json));
    }

    private static int TidyUp(string[] args, Shell shell)
    {
        var (file, json, check) = (new Argument<string>("FILE"), new Option<bool>("--json"), new Option<bool>("--check"));
        var parsed = Parsed(new Command("tidy") { file, json, check }, args);
        return TidyCommand.Run(shell, parsed.GetValue(file)!, parsed.GetValue(check), parsed.GetValue(json));
    }

    // The library reads the words; what is wrong with them is said in our own.
    private static ParseResult Parsed(Command command, string[] args)
    {
        var known = command.Options.SelectMany(o => o.Aliases.Append(o.Name)).ToArray();
        if (args.Skip(1).TakeWhile(a => a != "--").FirstOrDefault(a => a.Length > 1 && a[0] == '-' && !known.Contains(a.Split('=', ':')[0], StringComparer.Ordinal)) is { } stranger)
        {
            throw new RefusedException($"{command.Name} has no option '{stranger}'; it has {string.Join(", ", command.Options.Select(o => o.Name))}");
        }

        var parsed = command.Parse([.. args.Skip(1)], new ParserConfiguration { ResponseFileTokenReplacer = null });
        if (parsed.Errors.Count == 0)
        {
            return parsed;
        }

        if (parsed.UnmatchedTokens.Count > 0)
        {
            throw new RefusedException($"'{parsed.UnmatchedTokens[0]}' is one word too many; see handwheel {command.Name} --help");
        }

        var missing = command.Arguments.FirstOrDefault(a => a.Arity.MinimumNumberOfValues > 0 && parsed.GetResult(a)?.Tokens.Count is null or 0);
        if (missing is not null)
        {
            throw new RefusedException($"{command.Name} needs its {missing.Name}; see handwheel {command.Name} --help");
        }

        var bare = command.Options.FirstOrDefault(o => o.Required && parsed.GetResult(o) is null)
            ?? command.Options.FirstOrDefault(o => parsed.GetResult(o) is { } r && parsed.Errors.Any(e => e.SymbolResult == r));
        throw new RefusedException(bare is null ? $"{command.Name} was not understood; see handwheel {command.Name} --help" : $"{command.Name} needs one file name after {bare.Name}");
    }
}
