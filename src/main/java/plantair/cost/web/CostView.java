package plantair.cost.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.web.Words;

/**
 * The cost of the air of a site in words and in the units of a person.
 *
 * @param lead what the leaks cost, a sentence
 * @param facts what it was reckoned with, each with where it comes from
 * @param causes what costs, for table and chart
 * @param chartUnit unit of the bars
 * @param repairs what repairs save; empty when no second test was chosen
 * @param idle about machines that idle longer; empty when there is nothing to say
 * @param working the steps with their numbers
 * @param missing what is not known
 */
record CostView(
        Words lead,
        List<Fact> facts,
        List<Cause> causes,
        String chartUnit,
        List<Words> repairs,
        List<Words> idle,
        List<Words> working,
        List<Missing> missing) {

    /**
     * Something that was reckoned with.
     *
     * @param label key of its name
     * @param text number and unit
     * @param source where it comes from
     */
    record Fact(String label, String text, Words source) {}

    /**
     * Something that costs.
     *
     * @param label what
     * @param href its page
     * @param lost air or part that is lost
     * @param power kW; null when not known
     * @param energy kWh a year; null when not known
     * @param money a year; null when not known
     * @param bar length of its bar, without unit; null when there is none
     * @param state why a figure is not there; null when all are
     */
    record Cause(
            Words label,
            String href,
            @Nullable String lost,
            @Nullable String power,
            @Nullable String energy,
            @Nullable String money,
            @Nullable String bar,
            @Nullable String state) {}

    /**
     * Something that is not known.
     *
     * @param what in words
     * @param href where it can be typed
     * @param manager whether only managers can
     */
    record Missing(Words what, String href, boolean manager) {}
}
