package plantair.planner.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.web.EnteredField;

/** Form bean of a plan. */
public final class PlanForm {

    private List<String> receivers = new ArrayList<>();
    private List<String> pipes = new ArrayList<>();
    private EnteredField flow = new EnteredField();
    private EnteredField stop = new EnteredField();
    private EnteredField span = new EnteredField();
    private EnteredField limit = new EnteredField();
    private EnteredField division = new EnteredField();

    /** True when the address had nothing in it, so that the usual things are to be filled in. */
    boolean isUntouched() {
        return stop.getUnit().isBlank() && stop.isBlank() && receivers.isEmpty();
    }

    public List<String> getReceivers() {
        return receivers;
    }

    public void setReceivers(@Nullable List<String> receivers) {
        this.receivers = receivers == null ? new ArrayList<>() : receivers;
    }

    public List<String> getPipes() {
        return pipes;
    }

    public void setPipes(@Nullable List<String> pipes) {
        this.pipes = pipes == null ? new ArrayList<>() : pipes;
    }

    public EnteredField getFlow() {
        return flow;
    }

    public EnteredField getStop() {
        return stop;
    }

    public EnteredField getSpan() {
        return span;
    }

    public EnteredField getLimit() {
        return limit;
    }

    public EnteredField getDivision() {
        return division;
    }

    void setFlow(EnteredField field) {
        flow = field;
    }

    void setStop(EnteredField field) {
        stop = field;
    }

    void setSpan(EnteredField field) {
        span = field;
    }

    void setLimit(EnteredField field) {
        limit = field;
    }

    void setDivision(EnteredField field) {
        division = field;
    }
}
