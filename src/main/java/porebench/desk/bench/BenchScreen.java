package porebench.desk.bench;

import java.util.List;

/**
 * What the bench view shows of the bowl it looks at: words only, ready to be painted.
 *
 * @param step which step of how many
 * @param title the step
 * @param label what the digits are
 * @param digits the largest thing on the screen
 * @param unit beside the digits
 * @param isTyped whether the digits were typed, and are not what is aimed at
 * @param limits what the digits should be, and between which limits
 * @param how what is done, in a line or two
 * @param caution the hazard of the step; blank where there is none
 * @param message what is wrong or to be known now; blank where nothing is
 * @param isAlarm whether the message is about something wrong or doubtful
 * @param before what was read at the step before, read back
 * @param keys what the keys do
 * @param bowls all bowls on the bench
 * @param rings whether the soak of any bowl is over
 */
record BenchScreen(
        String step,
        String title,
        String label,
        String digits,
        String unit,
        boolean isTyped,
        String limits,
        String how,
        String caution,
        String message,
        boolean isAlarm,
        String before,
        String keys,
        List<Chip> bowls,
        boolean rings) {

    BenchScreen {
        bowls = List.copyOf(bowls);
    }

    /**
     * One bowl, in a word or two.
     *
     * @param number the number of the bowl
     * @param words its mix and how far it is
     * @param isShown whether it is the one looked at
     * @param rings whether its soak is over
     */
    record Chip(int number, String words, boolean isShown, boolean rings) {}
}
