package quarterlight.photo.speech;

/** How the recognizer's process answers. */
enum SpeechAnswer {
    DONE,
    /** The native part cannot be loaded on this computer. */
    NO_LIBRARY,
    /** The file is not a model. */
    NO_MODEL,
    /** The recognizer gave up on the sound. */
    FAILED
}
