-- What a page asks of the last months, of one receipt or check, or by the first digits of a seal, is found without a look at
-- all there ever was.
CREATE INDEX adjustment_of_check ON adjustment (check_id);
CREATE INDEX adjustment_followed ON adjustment (after_id) WHERE after_id IS NOT NULL;
CREATE INDEX bow_check_by_time ON bow_check (happened_at);
CREATE INDEX loan_by_time ON loan (issued_at, kind);
CREATE INDEX loan_line_by_time ON loan_line (out_at);
CREATE INDEX loan_line_of_receipt ON loan_line (receipt_id) WHERE receipt_id IS NOT NULL;
CREATE INDEX moved_receipt ON moved (receipt_id) WHERE receipt_id IS NOT NULL;
CREATE INDEX receipt_by_time ON receipt (happened_at);
CREATE INDEX story_by_seal ON story (substr(hash, 1, 12));
CREATE INDEX upkeep_record_by_time ON upkeep_record (happened_at);
