namespace Handwheel.Cli.Commands;

/// <summary>What each command says of itself.</summary>
internal static class Usage
{
    /// <summary>All commands.</summary>
    public const string All = """
        handwheel: readings for hand-cranked machines, worked out, shown and proved before metal is cut

          handwheel check JOB                      what would go wrong, each size, when the part comes free
          handwheel sheet JOB -o FILE.html         the dial sheet to work from
          handwheel why JOB STEP                   each reading of a step, down to the typed numbers
          handwheel check JOB --write-moves FILE   the moves and set-up facts as a file
          handwheel check --moves FILE             that file proved alone, with no plan
          handwheel tidy FILE                      a job or shop with its columns lined up
          handwheel ask WORDS...                   a question of the trade

        --json gives any of them for programs; --progress tells how far long work has come.
        Exit code 0: no halt. 1: a halt. 2: it could not be read or done.
        """;

    /// <summary>One command's help.</summary>
    /// <param name="command">Its name.</param>
    /// <returns>The text.</returns>
    public static string Of(string command) => command switch
    {
        "check" => """
            handwheel check JOB [--json] [--write-moves FILE] [--progress]
            handwheel check [JOB] --moves FILE [--json] [--progress]

            Reads a job, works out its moves, cuts them in exact simulation, and says what would go wrong and where,
            what each size would come out as, when the part comes free, and how surely all this was looked at.

              --write-moves FILE   also writes the moves and set-up facts, to be changed by hand and proved again
              --moves FILE         proves such a file with no plan, against the job it names or the one given
              --json               the same for programs: millimetres and degrees
              --progress           tells how far it has come, though nobody watches a terminal

            Exit code 0: no halt. 1: a halt. 2: it could not be read.
            """,
        "sheet" => """
            handwheel sheet JOB -o FILE.html [--json] [--progress]

            Writes the dial sheet: one page that needs nothing else, to read on a screen or print on A4.
            With a halt it is written all the same, and says DO NOT CUT on every page.

              -o FILE    where it goes
              --json     the report of check, and the sheet's fingerprint, for programs

            Exit code 0: no halt. 1: a halt. 2: it could not be read or written.
            """,
        "why" => """
            handwheel why JOB STEP [--json]

            Shows how each reading of a step (such as A8) came about: the rule, the numbers put in, what rounding did,
            and where each number was typed. In place of a step, 'design' shows each line of the design with its rule and source.
            """,
        "tidy" => """
            handwheel tidy FILE [--json] [--check]

            Lines up the columns of a job or shop. Comments stay, no meaning changes, the file is written in place.

              --check    writes nothing; exit code 1 where it would change something
            """,
        "ask" => """
            handwheel ask WORDS... [--json]

            Answers a question of the trade, with its working and its source:
              ask thread 10-32 UNF 2B      ask divide 17 on 40      ask fit 25 H7/g6
            """,
        _ => All,
    };
}
