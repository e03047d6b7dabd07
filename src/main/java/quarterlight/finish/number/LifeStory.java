package quarterlight.finish.number;

import static quarterlight.language.Sentences.say;

import quarterlight.units.Worded;

/** What can have happened to one panel, told apart inside the model. The order is that of every array of stories. */
public enum LifeStory implements Worded {
    FACTORY,
    OVER,
    LEVELLED,
    PARTLY,
    STRIPPED,
    REPLACED,
    PATCH,
    SKIM;

    /** A phrase for readers, in the language in hand. */
    public String words() {
        return say("finish.story." + word());
    }

    /** True if there is filler under the finish. */
    public boolean hasFiller() {
        return this == PATCH || this == SKIM;
    }
}
