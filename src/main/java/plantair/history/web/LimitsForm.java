package plantair.history.web;

import java.util.Optional;
import plantair.history.PlantLimits;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.trend.Limits;

/** What a person types about the limits of a site. */
final class LimitsForm {

    private static final int MOST = 100;

    private String watchBelow = "";
    private String planBelow = "";
    private String actBelow = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static LimitsForm of(PlantLimits limits) {
        var form = new LimitsForm();
        form.watchBelow = String.valueOf(limits.limits().watchBelow());
        form.planBelow = String.valueOf(limits.limits().planBelow());
        form.actBelow = String.valueOf(limits.limits().actBelow());
        form.edit = EditForm.of(limits);
        return form;
    }

    /** The limits; empty when something is wrong with what was typed. */
    Optional<Limits> read(Submission sent) {
        var watch = sent.checks().whole("watchBelow", watchBelow, 1, MOST, true);
        var plan = sent.checks().whole("planBelow", planBelow, 1, MOST, true);
        var act = sent.checks().whole("actBelow", actBelow, 1, MOST, true);
        if (watch.isEmpty() || plan.isEmpty() || act.isEmpty()) {
            return Optional.empty();
        }
        boolean planFalls = plan.get() < watch.get();
        boolean actFalls = act.get() < plan.get();
        if (!planFalls) {
            sent.reject("planBelow", "history.limits.order", plan.get(), watch.get());
        }
        if (!actFalls) {
            sent.reject("actBelow", "history.limits.order", act.get(), plan.get());
        }
        return planFalls && actFalls ? Optional.of(new Limits(watch.get(), plan.get(), act.get())) : Optional.empty();
    }

    public String getWatchBelow() {
        return watchBelow;
    }

    public void setWatchBelow(String watchBelow) {
        this.watchBelow = watchBelow;
    }

    public String getPlanBelow() {
        return planBelow;
    }

    public void setPlanBelow(String planBelow) {
        this.planBelow = planBelow;
    }

    public String getActBelow() {
        return actBelow;
    }

    public void setActBelow(String actBelow) {
        this.actBelow = actBelow;
    }

    public String getConfirmed() {
        return confirmed;
    }

    public void setConfirmed(String confirmed) {
        this.confirmed = confirmed;
    }

    public EditForm getEdit() {
        return edit;
    }
}
