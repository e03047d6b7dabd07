-- The edit log becomes a hash chain: who did it, what each changed row is now, and the hash of the entry over all that and the entry before.

ALTER TABLE edit_log ADD COLUMN who TEXT;
ALTER TABLE edit_log ADD COLUMN changes TEXT;
ALTER TABLE edit_log ADD COLUMN hash TEXT CHECK (length(hash) = 64);
