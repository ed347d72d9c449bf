package plantair.equipment.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plantair.equipment.Compressor;
import plantair.equipment.CompressorFacts;
import plantair.equipment.CompressorKind;
import plantair.equipment.CompressorPlate;
import plantair.equipment.Control;
import plantair.equipment.Drive;
import plantair.quantity.Entered;
import plantair.quantity.FixedUnit;
import plantair.quantity.FlowUnit;
import plantair.quantity.PowerUnit;
import plantair.register.EditForm;
import plantair.register.Submission;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person types about a compressor. */
final class CompressorForm {

    private static final int ROWS = 3;
    private static final int HOURS_OF_A_LEAP_YEAR = 8_784;

    private String site = "";
    private String tag = "";
    private String makerModel = "";
    private String serialNumber = "";
    private String kind = "";
    private String stages = "";
    private String drive = "";
    private String control = "";
    private MotorForm motor = new MotorForm();
    private final List<RatingRow> ratings = new ArrayList<>();
    private EnteredField loadedHours = new EnteredField();
    private String note = "";
    private String inService = "";
    private String confirmed = "";
    private EditForm edit = new EditForm();

    static CompressorForm blank(String site, UnitSet units) {
        var form = new CompressorForm();
        form.site = site;
        form.stages = "1";
        form.drive = Drive.UNKNOWN.name();
        form.control = Control.UNKNOWN.name();
        form.motor = MotorForm.blank(units);
        form.fill(units);
        form.loadedHours = EnteredField.blank(FixedUnit.HOUR);
        form.inService = "true";
        form.edit = new EditForm();
        return form;
    }

    static CompressorForm from(Compressor compressor, UnitSet units) {
        var facts = compressor.facts();
        var plate = facts.plate();
        var form = new CompressorForm();
        form.tag = plate.tag();
        form.makerModel = plate.makerModel();
        form.serialNumber = plate.serialNumber();
        form.kind = plate.kind().name();
        form.stages = String.valueOf(plate.stages());
        form.drive = plate.drive().name();
        form.control = plate.control().name();
        form.motor = MotorForm.from(plate, units);
        facts.ratings().forEach(rating -> form.ratings.add(RatingRow.from(rating)));
        form.fill(units);
        form.loadedHours = EnteredField.of(plate.loadedHours(), FixedUnit.HOUR);
        form.note = plate.note();
        form.inService = String.valueOf(plate.inService());
        form.edit = EditForm.of(compressor);
        return form;
    }

    private void fill(UnitSet units) {
        while (ratings.size() < ROWS) {
            ratings.add(RatingRow.blank(units));
        }
    }

    /** Offers one more rating point. */
    void addRating(UnitSet units) {
        if (hasRoom()) {
            ratings.add(RatingRow.blank(units));
        }
    }

    /** Whether one more rating point may be offered. */
    public boolean hasRoom() {
        return ratings.size() < RatingRows.MOST;
    }

    /** The facts; empty when something is wrong with what was typed. */
    Optional<CompressorFacts> read(Submission sent) {
        Optional<CompressorPlate> plate = readPlate(sent);
        var points = new RatingRows(sent).read(ratings);
        return plate.map(read -> new CompressorFacts(read, points));
    }

    private Optional<CompressorPlate> readPlate(Submission sent) {
        var checks = sent.checks();
        var typing = new Typing(sent);
        var readTag = checks.text("tag", tag, 40, true);
        var maker = checks.text("makerModel", makerModel, 120, false);
        var serial = checks.text("serialNumber", serialNumber, 80, false);
        var readKind = checks.choice("kind", kind, CompressorKind.class);
        var readStages = checks.whole("stages", stages, 1, 6, true);
        var readDrive = checks.choice("drive", drive, Drive.class);
        var readControl = checks.choice("control", control, Control.class);
        var power = typing.optional("motor.power", motor.getPower(), PowerUnit.class, Usual.POWER);
        var voltage = typing.optional("motor.voltage", motor.getVoltage(), FixedUnit.VOLT, Usual.VOLTAGE);
        var current = typing.optional("motor.current", motor.getCurrent(), FixedUnit.AMPERE, Usual.CURRENT);
        var phases = readPhases(sent);
        var frequency = typing.optional("motor.frequency", motor.getFrequency(), FixedUnit.HERTZ, Usual.FREQUENCY);
        var speed = typing.optional("motor.ratedSpeed", motor.getRatedSpeed(), FixedUnit.RPM, Usual.SPEED);
        var swept = checks.positive(
                "motor.displacement", checks.optional("motor.displacement", motor.getDisplacement(), FlowUnit.class));
        var hours = readHours(sent);
        var readNote = checks.text("note", note, 4_000, false);
        if (readTag.isEmpty()
                || readKind.isEmpty()
                || readStages.isEmpty()
                || readDrive.isEmpty()
                || readControl.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new CompressorPlate(
                readTag.get(),
                maker.orElse(""),
                serial.orElse(""),
                readKind.get(),
                readStages.get(),
                readDrive.get(),
                readControl.get(),
                power.orElse(null),
                voltage.orElse(null),
                current.orElse(null),
                phases.orElse(null),
                frequency.orElse(null),
                speed.orElse(null),
                swept.orElse(null),
                hours.orElse(null),
                readNote.orElse(""),
                Boolean.parseBoolean(inService)));
    }

    private Optional<Integer> readPhases(Submission sent) {
        var phases = sent.checks().whole("motor.phases", motor.getPhases(), 1, 3, false);
        if (phases.isPresent() && phases.get() == 2) {
            sent.reject("motor.phases", "choice.unknown", motor.getPhases());
        }
        return phases;
    }

    private Optional<Entered> readHours(Submission sent) {
        var hours = sent.checks().optional("loadedHours", loadedHours, FixedUnit.HOUR);
        if (hours.isPresent() && !(hours.get().value() >= 0 && hours.get().value() <= HOURS_OF_A_LEAP_YEAR)) {
            sent.reject("loadedHours.number", "compressor.loadedHours.range");
            return Optional.empty();
        }
        return hours;
    }

    public String getSite() {
        return site;
    }

    public void setSite(String site) {
        this.site = site;
    }

    public String getTag() {
        return tag;
    }

    public void setTag(String tag) {
        this.tag = tag;
    }

    public String getMakerModel() {
        return makerModel;
    }

    public void setMakerModel(String makerModel) {
        this.makerModel = makerModel;
    }

    public String getSerialNumber() {
        return serialNumber;
    }

    public void setSerialNumber(String serialNumber) {
        this.serialNumber = serialNumber;
    }

    public String getKind() {
        return kind;
    }

    public void setKind(String kind) {
        this.kind = kind;
    }

    public String getStages() {
        return stages;
    }

    public void setStages(String stages) {
        this.stages = stages;
    }

    public String getDrive() {
        return drive;
    }

    public void setDrive(String drive) {
        this.drive = drive;
    }

    public String getControl() {
        return control;
    }

    public void setControl(String control) {
        this.control = control;
    }

    public MotorForm getMotor() {
        return motor;
    }

    public List<RatingRow> getRatings() {
        return ratings;
    }

    public EnteredField getLoadedHours() {
        return loadedHours;
    }

    public String getNote() {
        return note;
    }

    public void setNote(String note) {
        this.note = note;
    }

    public String getInService() {
        return inService;
    }

    public void setInService(String inService) {
        this.inService = inService;
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
