using System.Collections;
using System.Globalization;
using System.Reflection;
using System.Text;
using Handwheel.Jobs.Documents;

namespace Handwheel.Jobs.Tests.Readers;

// A record as lines of its values, places and typed texts left out: two writings of one thing have the same facts.
internal static class Facts
{
    public static string Of(object value)
    {
        var text = new StringBuilder();
        Write(text, value, string.Empty);
        return text.ToString();
    }

    private static void Write(StringBuilder text, object? value, string path)
    {
        switch (value)
        {
            case null:
                break;
            case SourceSpan:
                break;
            case Typed typed:
                Write(text, typed.Value, path);
                break;
            case double number:
                text.Append(CultureInfo.InvariantCulture, $"{path} = {Math.Round(number, 9) + 0.0:R}\n");
                break;
            case string or bool or int or Enum:
                text.Append(CultureInfo.InvariantCulture, $"{path} = {value}\n");
                break;
            case IDictionary map:
                foreach (DictionaryEntry entry in map)
                {
                    Write(text, entry.Value, path + "/" + entry.Key);
                }

                break;
            case IEnumerable list:
                var index = 0;
                foreach (var item in list)
                {
                    Write(text, item, path + "/" + index++.ToString(CultureInfo.InvariantCulture));
                }

                break;
            default:
                text.Append(CultureInfo.InvariantCulture, $"{path} : {value.GetType().Name}\n");
                foreach (var property in value.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.GetIndexParameters().Length == 0 && p.Name is not ("Where" or "Text" or "Unit" or "File" or "EqualityContract")))
                {
                    Write(text, property.GetValue(value), path + "." + property.Name);
                }

                break;
        }
    }
}
