/**
 * What is unsafe and in somebody's hands: who has it, how to reach them, and why it must not be
 * shot. First page, loans, receiving, slips, fleet and API all ask {@link
 * club.ascham.askback.AskBack}; nobody looks for it in a way of its own.
 */
package club.ascham.askback;
