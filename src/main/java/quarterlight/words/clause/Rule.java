package quarterlight.words.clause;

import java.util.List;

/** Finds evidence of one kind in a clause. */
public interface Rule {
    void read(Moment moment, List<DraftBuilder> found);
}
