package io.github.kernlot.survey.place;

/** How a hole meets a plane. */
public enum Meeting {
    /** It goes through to the other side. */
    CROSSES,
    /** It comes to the plane and stays on its side; or it begins or ends there. */
    TOUCHES,
    /** It lies in the plane along a stretch. */
    LIES_IN
}
