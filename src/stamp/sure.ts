/** A text read with this probability is read: it needs no second look, and shows which way up it stands. */
export const sure = 0.9;
