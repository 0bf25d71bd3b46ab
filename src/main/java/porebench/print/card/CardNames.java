package porebench.print.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import porebench.evidence.paper.CardText;
import porebench.evidence.paper.FactorCard;
import porebench.print.page.Align;
import porebench.print.page.Block;
import porebench.print.page.FittedText;
import porebench.print.page.Pen;
import porebench.print.page.QrMark;
import porebench.print.page.TextFit;
import porebench.print.page.Weight;
import porebench.print.page.Words;
import porebench.record.Laboratory;

/** The names on a card, and beside them the code of squares with the card's plain text, in which every name stands whole. */
final class CardNames {
    private static final double GAP = 3;
    /** 24 mm where there is room, 21 mm where there is little. */
    private static final double CODE = 68;

    private static final double SMALL_CODE = 60;

    private final FactorCard card;
    private final Pen pen;
    private final Words words;

    CardNames(FactorCard card, Pen pen, Words words) {
        this.card = card;
        this.pen = pen;
        this.words = words;
    }

    /** Returns the laboratory and the kind of paper, over a rule. */
    Block head(double left, double width) throws IOException {
        double kindWidth = width * 0.28;
        double nameWidth = width - kindWidth - GAP;
        String name = card.laboratory().map(Laboratory::name).orElse("");
        FittedText laboratory = TextFit.first(
                pen.faces(),
                name,
                new TextFit(Weight.BOLD, 9, 7, nameWidth, 1),
                new TextFit(Weight.BOLD, 7.5, 6, nameWidth, 2));
        FittedText kind = TextFit.line(Weight.REGULAR, 9, kindWidth).fit(pen.faces(), words.say("card.kind"));
        double height = Math.max(laboratory.height(), kind.height()) + 1;
        return new Block(height + 2, top -> {
            pen.text(laboratory, left, top, nameWidth, Align.LEFT);
            pen.text(kind, left + width - kindWidth, top, kindWidth, Align.RIGHT);
            pen.line(left, top + height, left + width, top + height, 1);
        });
    }

    /** Returns mix, title, sources and group with the code at their right. */
    Block block(double left, double width, boolean tight, boolean tightest, String text) throws IOException {
        double code = tight ? SMALL_CODE : CODE;
        double place = width - code - GAP;
        List<FittedText> fitted = new ArrayList<>();
        fitted.add(TextFit.first(
                pen.faces(),
                card.mixId().text(),
                new TextFit(Weight.BOLD, tight ? 12 : 17, 9.5, place, 1),
                new TextFit(Weight.BOLD, tight ? 11 : 14, 8, place, 2)));
        if (!card.mixTitle().isBlank()) {
            fitted.add(new TextFit(Weight.REGULAR, tight ? 8.5 : 10.5, 7, place, tightest ? 1 : 2)
                    .fit(pen.faces(), card.mixTitle()));
        }
        TextFit small = new TextFit(Weight.REGULAR, tight ? 7 : 9, 6.5, place, tightest ? 2 : 3);
        fitted.add(sources(small));
        if (card.issue().grounds().group().isPresent()) {
            fitted.add(new TextFit(Weight.REGULAR, tight ? 7 : 9, 6.5, place, tightest ? 1 : 2)
                    .fit(
                            pen.faces(),
                            CardText.group(
                                    card.issue(), card.issue().grounds().group().get(), words.card())));
        }
        double height = fitted.stream().mapToDouble(FittedText::height).sum();
        return new Block(Math.max(height, code), top -> {
            double y = top;
            for (FittedText one : fitted) {
                pen.text(one, left, y, place, Align.LEFT);
                y += one.height();
            }
            QrMark.drawFine(pen, text, left + width - code, top, code);
        });
    }

    /** Names as many sources as fit, and says how many do not. */
    FittedText sources(TextFit place) throws IOException {
        List<String> names = card.sources();
        for (int shown = names.size(); shown > 1; shown--) {
            String list = String.join("; ", names.subList(0, shown));
            int others = names.size() - shown;
            FittedText fitted = place.fit(
                    pen.faces(),
                    others == 0
                            ? words.say("card.sources", list)
                            : words.say("card.sources.more", list, Integer.toString(others)));
            if (!fitted.cut()) {
                return fitted;
            }
        }
        return place.fit(pen.faces(), words.say("card.sources", String.join("; ", names)));
    }
}
