package quarterlight.ui.words;

import static quarterlight.language.Sentences.sayOr;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import quarterlight.car.ZoneId;
import quarterlight.edit.spoken.SpokenQuote;
import quarterlight.ui.kit.Texts;
import quarterlight.words.Utterance;
import quarterlight.words.clash.Contradiction;
import quarterlight.words.clash.Testimony;
import quarterlight.words.unsaid.Unsaid;

/**
 * Something that the walk leaves open: two testimonies against each other, or something of which it says nothing.
 *
 * @param what of which sort, in a word or two
 * @param about the zones where they are too many to name; else empty
 * @param text as a sentence
 * @param voices what is said by whom, a line each
 * @param heard the seconds that can be played, none to two
 */
record Question(
        String what, String about, List<ZoneId> zones, String text, List<String> voices, List<Utterance> heard) {
    Question {
        zones = List.copyOf(zones);
        voices = List.copyOf(voices);
        heard = List.copyOf(heard);
    }

    /** Contradictions first, then promises, sides and what was never spoken of. */
    static List<Question> of(List<Contradiction> against, List<Unsaid> unsaid, Texts texts) {
        List<Question> all = new ArrayList<>();
        against.forEach(one -> all.add(of(one, texts)));
        unsaid.forEach(one -> all.add(of(one, texts)));
        return List.copyOf(all);
    }

    private static Question of(Contradiction one, Texts texts) {
        List<Testimony> both = List.of(one.first(), one.second());
        return new Question(
                texts.get("words.question.against"),
                one.zones().isEmpty() ? texts.get("words.whole-car") : "",
                one.zones(),
                one.why(),
                both.stream().map(voice -> voice(voice, texts)).toList(),
                both.stream().flatMap(voice -> voice.heard().stream()).toList());
    }

    private static String by(Testimony voice) {
        return sayOr("words.saidby." + voice.by(), voice.by());
    }

    private static String voice(Testimony voice, Texts texts) {
        return voice.heard()
                .map(words -> texts.get(
                        "words.question.voice", by(voice), SpokenQuote.clock(words.atSeconds()), voice.text()))
                .orElseGet(() -> texts.get("words.question.row", by(voice), voice.text()));
    }

    private static Question of(Unsaid one, Texts texts) {
        String said = one.heard().map(words -> words.words().strip()).orElse("");
        return switch (one.kind()) {
            case PROMISE ->
                new Question(
                        texts.get("words.question.promise"),
                        one.zones().isEmpty() ? texts.get("words.whole-car") : "",
                        one.zones(),
                        texts.get("words.question.promise.text", said),
                        List.of(),
                        heard(one));
            case OTHER_SIDE ->
                new Question(
                        texts.get("words.question.side"),
                        "",
                        one.zones(),
                        texts.get("words.question.side.text", said),
                        List.of(),
                        heard(one));
            case NEVER_SPOKEN_OF ->
                new Question(
                        texts.get("words.question.never"),
                        one.group()
                                .map(group -> texts.get("words.group." + group.word()))
                                .map(group -> one.wholeGroup() ? texts.get("words.question.group", group) : group)
                                .orElse(""),
                        one.zones(),
                        "",
                        List.of(),
                        List.of());
        };
    }

    private static List<Utterance> heard(Unsaid one) {
        return Stream.ofNullable(one.heard().orElse(null)).toList();
    }

    /** When it is first heard of. */
    Optional<Utterance> first() {
        return heard.stream().findFirst();
    }

    /** What tells it from others. */
    String key() {
        return what + about + zones + text + voices;
    }
}
