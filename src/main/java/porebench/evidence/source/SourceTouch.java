package porebench.evidence.source;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import porebench.evidence.Evidence;
import porebench.evidence.Moments;
import porebench.evidence.RegisterRow;
import porebench.evidence.SourceFactors;
import porebench.evidence.custody.Custody;
import porebench.evidence.custody.HeldCard;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.Records;
import porebench.record.book.Stamp;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.record.source.SourceStory;

/**
 * What a source touches, and what a step of it would do before it is kept. Only the mixes of the source are read.
 *
 * @param story what the source was until now
 * @param looked the day that is looked at: the first of the new stone where that is still to come, else today
 * @param mixes every mix that uses it, in the order of their ids
 * @param factors what factors these have with the stone declared last; empty when none has any
 */
public record SourceTouch(
        SourceStory story, LocalDate looked, List<TouchedMix> mixes, Optional<SourceFactors> factors) {
    private static final Stamp NOT_KEPT = new Stamp("not kept yet", Instant.EPOCH, "not kept yet");

    public SourceTouch {
        mixes = List.copyOf(mixes);
    }

    /**
     * A step that is not kept yet.
     *
     * @param step what it is
     * @param day the day it states
     */
    public record Wish(SourceStep step, Optional<LocalDate> day) {
        /** Returns the step that a version says, as far as factors hang on it; empty where it says none. */
        public static Optional<Wish> of(Source next) {
            return next.step().map(step -> new Wish(step, next.changedOn()));
        }
    }

    /**
     * Looks at what a source touches.
     *
     * @param book what the lab book holds
     * @param reader hands out everything known about some mixes, one after the other
     * @param source the source
     * @param wish the step that is asked about; empty to look only
     * @param now the day and time of the question, by the laboratory's clock
     * @return empty when the lab book has no such source
     */
    public static Optional<SourceTouch> of(
            Records book,
            BiConsumer<Collection<MixId>, Consumer<Evidence>> reader,
            SourceId source,
            Optional<Wish> wish,
            LocalDateTime now) {
        return SourceStory.of(book, source).map(story -> {
            SourceStory then = wish.map(step -> wished(story, step)).orElse(story);
            LocalDateTime looked = wish.flatMap(Wish::day)
                    .filter(day -> day.isAfter(now.toLocalDate()))
                    .map(Moments::endOf)
                    .orElse(now);
            List<MixId> mixes = book.latestOf(Belonging.MIXES_OF_SOURCE, source.text()).stream()
                    .map(mix -> mix.value().id())
                    .toList();
            List<TouchedMix> touched = new ArrayList<>();
            List<RegisterRow> rows = new ArrayList<>();
            SourceFactors.Gathering factors = new SourceFactors.Gathering(source);
            reader.accept(mixes, evidence -> {
                factors.add(evidence);
                rows.add(RegisterRow.of(evidence, now));
                touched.add(TouchedMix.of(evidence, evidence.with(then), now, looked));
            });
            Map<MixId, List<HeldCard>> cards = Custody.of(book, rows, now).cards().stream()
                    .collect(Collectors.groupingBy(card -> card.print().mixId()));
            return new SourceTouch(
                    story,
                    looked.toLocalDate(),
                    touched.stream()
                            .map(mix -> mix.with(cards.getOrDefault(mix.mixId(), List.of())))
                            .toList(),
                    factors.factors());
        });
    }

    private static SourceStory wished(SourceStory story, Wish wish) {
        Source next = story.newest().value().as(Optional.of(wish.step()), wish.day(), Optional.empty());
        return story.with(new Draft(next, story.newest().number()), NOT_KEPT);
    }

    /** Returns the mixes whose factor no longer holds if the version is kept. */
    public List<TouchedMix> madeUntrue() {
        return mixes.stream().filter(TouchedMix::becomesUntrue).toList();
    }

    /** Returns the mixes whose factor holds again if the version is kept. */
    public List<TouchedMix> madeTrue() {
        return mixes.stream().filter(TouchedMix::becomesTrue).toList();
    }

    /** Returns the cards of some mixes that are out, with who holds them. */
    public static List<HeldCard> out(List<TouchedMix> mixes) {
        return mixes.stream().flatMap(mix -> mix.out().stream()).toList();
    }

    /** Returns how many cards of some mixes are out. */
    public static int cardsOut(List<TouchedMix> mixes) {
        return mixes.stream().mapToInt(TouchedMix::cardsOut).sum();
    }

    /** Returns how many trials of its mixes count. */
    public int trials() {
        return mixes.stream().mapToInt(TouchedMix::trials).sum();
    }
}
