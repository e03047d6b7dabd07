package quarterlight.words.lexicon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import quarterlight.words.text.Token;

/** What captions write for words of the trade that they do not know: {@code rear balance} for the rear valance. Immutable. */
public final class MisheardTerms {
    private record Row(List<String> heard, List<String> meant) {}

    private final Map<String, List<Row>> byFirst = new HashMap<>();

    /** @param rows pairs of what is heard and what is meant */
    public MisheardTerms(List<String[]> rows) {
        for (String[] row : rows) {
            Row one = new Row(words(row[0]), words(row[1]));
            byFirst.computeIfAbsent(one.heard().get(0), k -> new ArrayList<>()).add(one);
        }
        byFirst.values()
                .forEach(
                        list -> list.sort((a, b) -> b.heard().size() - a.heard().size()));
    }

    private static List<String> words(String text) {
        return Arrays.asList(text.strip().split("\\s+"));
    }

    List<Token> meant(List<Token> tokens) {
        List<Token> out = new ArrayList<>();
        int i = 0;
        while (i < tokens.size()) {
            Row row = row(tokens, i);
            if (row == null) {
                out.add(tokens.get(i));
                i++;
            } else {
                replace(tokens.subList(i, i + row.heard().size()), row.meant(), out);
                i += row.heard().size();
            }
        }
        return out;
    }

    private Row row(List<Token> tokens, int at) {
        for (Row row : byFirst.getOrDefault(tokens.get(at).word(), List.of())) {
            boolean all = at + row.heard().size() <= tokens.size();
            for (int k = 1; all && k < row.heard().size(); k++) {
                all = tokens.get(at + k).word().equals(row.heard().get(k));
            }
            if (all) {
                return row;
            }
        }
        return null;
    }

    private static void replace(List<Token> heard, List<String> meant, List<Token> out) {
        Token first = heard.get(0);
        Token last = heard.get(heard.size() - 1);
        for (int k = 0; k < meant.size(); k++) {
            Token like = heard.get(Math.min(k, heard.size() - 1));
            boolean end = k == meant.size() - 1;
            StringBuilder shown = new StringBuilder(k < heard.size() ? like.shown() : "");
            for (int j = k + 1; end && j < heard.size(); j++) {
                shown.append(' ').append(heard.get(j).shown());
            }
            out.add(new Token(
                    meant.get(k),
                    shown.toString().strip(),
                    like.at(),
                    end ? last.until() : like.until(),
                    end ? last.stop() : k < heard.size() - 1 ? like.stop() : quarterlight.words.text.Punctuation.NONE,
                    first.speaker() && k == 0));
        }
    }
}
