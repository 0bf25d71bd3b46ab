package porebench.desk.register;

import porebench.desk.form.Form;

/** The fields of one record, linked to its draft. */
interface RecordForm {
    /** Returns the rows. */
    Form form();

    /** Shows the draft in the fields. */
    void pull();
}
