-- What a page asks of the last months, or by the first digits of a seal, is found without a look at all there ever was.
CREATE INDEX bow_check_by_time ON bow_check (happened_at);
CREATE INDEX story_by_seal ON story (substr(hash, 1, 12));
