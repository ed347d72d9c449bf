package plantair.vessel.web;

import java.time.Clock;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import plantair.equipment.Receiver;
import plantair.equipment.Receivers;
import plantair.register.Register;
import plantair.register.Submission;
import plantair.vessel.CertificateFacts;
import plantair.vessel.VesselCertificate;
import plantair.vessel.VesselCertificates;
import plantair.web.NoSuchRecord;
import plantair.web.Person;
import plantair.web.UnitChoices;
import plantair.web.UnitSet;

/** Adds certificates and permits to a receiver and changes what is said of them. */
@Controller
final class CertificateController {

    private static final String FORM = "vessel/certificate";

    private final Receivers receivers;
    private final VesselCertificates certificates;
    private final Register<CertificateFacts, VesselCertificate> register;
    private final Clock clock;

    CertificateController(
            Receivers receivers,
            VesselCertificates certificates,
            Register<CertificateFacts, VesselCertificate> register,
            Clock clock) {
        this.receivers = receivers;
        this.certificates = certificates;
        this.register = register;
        this.clock = clock;
    }

    @ModelAttribute
    void lists(Model model) {
        model.addAttribute("pressures", UnitChoices.pressure());
    }

    @GetMapping("/receivers/{id}/certificates/new")
    ModelAndView blank(@PathVariable long id, UnitSet units) {
        return page(vessel(receiver(id)), null, new ModelAndView(FORM, "form", CertificateForm.blank(units)));
    }

    @PostMapping("/receivers/{id}/certificates")
    ModelAndView add(
            @PathVariable long id,
            @ModelAttribute("form") CertificateForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        Receiver receiver = receiver(id);
        Vessel vessel = vessel(receiver);
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<CertificateFacts> facts = form.read(sent, vessel);
        checkNumber(sent, facts, id, 0);
        var saved = sent.save(
                "number",
                by -> register.add(new VesselCertificate(receiver, facts.orElseThrow()), by.reason(), by.by()));
        return saved.isPresent() ? sent.accepted(vessel.page(), redirect) : page(vessel, null, sent.refused(FORM));
    }

    /** Leads to the page that shows the certificate. */
    @GetMapping("/certificates/{id}")
    String find(@PathVariable long id) {
        return "redirect:/receivers/" + certificate(id).receiver().id();
    }

    @GetMapping("/certificates/{id}/edit")
    ModelAndView edit(@PathVariable long id, UnitSet units) {
        VesselCertificate certificate = certificate(id);
        return page(
                vessel(certificate.receiver()),
                certificate,
                new ModelAndView(FORM, "form", CertificateForm.from(certificate, units)));
    }

    @PostMapping("/certificates/{id}")
    ModelAndView change(
            @PathVariable long id,
            @ModelAttribute("form") CertificateForm form,
            BindingResult errors,
            RedirectAttributes redirect,
            Person person) {
        VesselCertificate certificate = certificate(id);
        Vessel vessel = vessel(certificate.receiver());
        var sent = new Submission(form.getEdit(), form.getConfirmed(), errors, person);
        Optional<CertificateFacts> facts = form.read(sent, vessel);
        checkNumber(sent, facts, vessel.id(), id);
        sent.change(register, certificate, facts);
        var saved = sent.save(
                "number", by -> register.revise(id, certificate.version(), facts.orElseThrow(), by.reason(), by.by()));
        return saved.isPresent()
                ? sent.accepted(vessel.page(), redirect)
                : page(vessel, certificate, sent.refused(FORM));
    }

    private Receiver receiver(long id) {
        return receivers.findWithSiteById(id).orElseThrow(() -> new NoSuchRecord("receiver " + id));
    }

    private VesselCertificate certificate(long id) {
        return certificates.findWithReceiver(id).orElseThrow(() -> new NoSuchRecord("certificate " + id));
    }

    private Vessel vessel(Receiver receiver) {
        return Vessel.of(receiver, clock);
    }

    private static ModelAndView page(Vessel vessel, @Nullable VesselCertificate certificate, ModelAndView page) {
        return page.addObject("vessel", vessel)
                .addObject(
                        "changed",
                        certificate == null ? null : certificate.facts().number())
                .addObject(
                        "target",
                        certificate == null ? vessel.page() + "/certificates" : "/certificates/" + certificate.id());
    }

    private void checkNumber(Submission sent, Optional<CertificateFacts> facts, long receiver, long id) {
        if (facts.isPresent()
                && certificates.existsByReceiverIdAndFactsNumberIgnoreCaseAndIdNot(
                        receiver, facts.get().number(), id)) {
            sent.reject("number", "register.taken");
        }
    }
}
