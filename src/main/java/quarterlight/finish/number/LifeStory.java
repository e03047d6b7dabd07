package quarterlight.finish.number;

import quarterlight.language.Sentences;
import quarterlight.units.Worded;

/** What can have happened to one panel, told apart inside the model. The order is that of every array of stories. */
public enum LifeStory implements Worded {
    FACTORY("the finish of the factory, nothing on top"),
    OVER("refinished over the earlier finish, at least one coat more"),
    LEVELLED("sanded down and refinished to about the same thickness"),
    PARTLY("refinished in part: a spot or a blend, factory finish around it"),
    STRIPPED("stripped and refinished"),
    REPLACED("a replaced panel, refinished"),
    PATCH("a local patch of filler under new finish"),
    SKIM("filler over most of the panel under new finish");

    private final String words;

    LifeStory(String words) {
        this.words = words;
    }

    /** A phrase for readers. */
    public String words() {
        return Sentences.sayOr("words.lifestory." + word(), words);
    }

    /** True if there is filler under the finish. */
    public boolean hasFiller() {
        return this == PATCH || this == SKIM;
    }
}
