package dev.fairlead.cli;

/** Forms in which an audit is written. */
enum AuditForm {
    text,
    json,
    ndjson,
    csv,
    xlsx,
    parquet,
    html;

    /** True for tables, which carry the numbers behind each finding. */
    boolean numbers() {
        return this == csv || this == xlsx || this == parquet;
    }

    /** True for what is no text, and is not sent to a terminal. */
    boolean binary() {
        return this == xlsx || this == parquet;
    }
}
