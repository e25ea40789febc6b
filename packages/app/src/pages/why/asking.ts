/** A question with its answers, the last of which passes it over. */
export type Asking = { question: string; answers: readonly { label: string; onPress: () => void }[] };

/** What was answered. */
export type Given = { question: string; answer: string; onTakeBack: () => void };
