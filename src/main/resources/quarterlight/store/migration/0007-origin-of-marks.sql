-- A mark may say where the part that bears it comes from.

ALTER TABLE mark ADD COLUMN origin TEXT;
