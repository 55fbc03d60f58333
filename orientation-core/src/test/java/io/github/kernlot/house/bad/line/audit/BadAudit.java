package io.github.kernlot.house.bad.line.audit;

/** A room that another one knows. */
public final class BadAudit {}
