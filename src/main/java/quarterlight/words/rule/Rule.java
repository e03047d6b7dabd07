package quarterlight.words.rule;

import java.util.List;

/** Finds evidence of one kind in a clause. */
interface Rule {
    void read(Moment moment, List<Finding> found);
}
