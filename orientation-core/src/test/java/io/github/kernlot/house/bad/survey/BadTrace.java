package io.github.kernlot.house.bad.survey;

/** What no tier of orientation may know. */
public final class BadTrace {}
