package plantair.demand.web;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import plantair.quantity.FixedUnit;
import plantair.web.EnteredField;
import plantair.web.UnitSet;

/** What a person supposes; it all stands in the address. */
final class WhatIfForm {

    private String kind = "";
    private String pieces = "";
    private AirForm air = new AirForm();
    private EnteredField useFactor = new EnteredField();
    private EnteredField reserve = new EnteredField();
    private List<String> out = new ArrayList<>();

    /** Whether the address asks nothing. */
    boolean isBlank() {
        return kind.isBlank() && out.isEmpty();
    }

    /** The usual things where the address says nothing. */
    void fill(UnitSet units) {
        pieces = pieces.isBlank() ? "1" : pieces;
        if (air.getPressure().getUnit().isBlank()) {
            air = AirForm.blank(units);
        }
        if (useFactor.getUnit().isBlank()) {
            useFactor = EnteredField.blank(FixedUnit.PERCENT);
            reserve = EnteredField.blank(FixedUnit.PERCENT);
        }
    }

    public String getKind() {
        return kind;
    }

    public void setKind(String kind) {
        this.kind = kind;
    }

    public String getPieces() {
        return pieces;
    }

    public void setPieces(String pieces) {
        this.pieces = pieces;
    }

    public AirForm getAir() {
        return air;
    }

    public EnteredField getUseFactor() {
        return useFactor;
    }

    public EnteredField getReserve() {
        return reserve;
    }

    public List<String> getOut() {
        return out;
    }

    public void setOut(@Nullable List<String> out) {
        this.out = out == null ? new ArrayList<>() : out;
    }
}
