package quarterlight.words.clause;

import java.util.List;
import java.util.Map;
import quarterlight.words.Draft;

/**
 * A walk as it was heard: its clauses with their places, and the drafts that they gave.
 *
 * @param clauseOf by the id of a draft, the clause from which it follows
 */
public record Heard(List<Moment> moments, List<Draft> drafts, Map<String, Integer> clauseOf) {
    public Heard {
        moments = List.copyOf(moments);
        drafts = List.copyOf(drafts);
        clauseOf = Map.copyOf(clauseOf);
    }
}
