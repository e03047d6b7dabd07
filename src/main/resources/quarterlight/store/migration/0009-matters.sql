-- The inspector's own severities of what matters, with the severity by the rule when it was decided; what the first page says of the inspector,
-- and its paragraph in the inspector's words.

ALTER TABLE visit ADD COLUMN credentials TEXT;
ALTER TABLE visit ADD COLUMN contact TEXT;
ALTER TABLE visit ADD COLUMN brief TEXT;

CREATE TABLE matter_decision (
    id       INTEGER PRIMARY KEY,
    matter   TEXT NOT NULL CHECK (trim(matter) <> ''),
    severity TEXT NOT NULL,
    reason   TEXT NOT NULL CHECK (trim(reason) <> ''),
    ruled    TEXT NOT NULL
) STRICT;
