package plantair.account.web;

/** What a person types to change the own password. */
final class PasswordForm {

    private String current = "";
    private String password = "";
    private String again = "";

    public String getCurrent() {
        return current;
    }

    public void setCurrent(String current) {
        this.current = current;
    }

    public String getPassword() {
        return password;
    }

    public void setPassword(String password) {
        this.password = password;
    }

    public String getAgain() {
        return again;
    }

    public void setAgain(String again) {
        this.again = again;
    }
}
