-- What a borrower reads at home: whom to call, on what terms, and how far the brace height may move before the bow
-- comes back. All of it is the club's own, and may be left out.
ALTER TABLE club ADD COLUMN telephone TEXT CHECK (length(telephone) BETWEEN 1 AND 60);
ALTER TABLE club ADD COLUMN mail TEXT CHECK (length(mail) BETWEEN 1 AND 200);
ALTER TABLE club ADD COLUMN terms TEXT CHECK (length(terms) BETWEEN 1 AND 1200);
ALTER TABLE club ADD COLUMN brace_may_move INTEGER CHECK (brace_may_move BETWEEN 100000 AND 2000000);
ALTER TABLE club ADD COLUMN brace_may_move_source TEXT CHECK ((brace_may_move IS NULL) = (brace_may_move_source IS NULL));

-- That the stringer, never loosing without an arrow and the arrows' length were shown: who showed it, and when. Loans
-- from before nobody was asked stay without.
ALTER TABLE loan ADD COLUMN briefed_at TEXT;
ALTER TABLE loan ADD COLUMN briefed_by INTEGER REFERENCES account (id) CHECK ((briefed_by IS NULL) = (briefed_at IS NULL));
