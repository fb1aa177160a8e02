package dev.fairlead.model.shape;

/** How the records of one class are described, made and taken apart. */
interface RecordCode {
    /** The same for another class of records; null when that is not known here. */
    RecordCode of(Class<? extends Record> type);

    /** The components in their order. */
    FieldShape[] fields();

    /** Makes the record of its component values in order. */
    Record make(Object[] values);

    /** Reads one component of a record. */
    Object get(Record record, int field);
}
