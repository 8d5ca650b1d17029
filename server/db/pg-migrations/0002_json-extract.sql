-- one key of a body, by the name that libSQL has for it: a query is the same on both
CREATE FUNCTION json_extract(body text, path text) RETURNS text
  LANGUAGE sql IMMUTABLE STRICT PARALLEL SAFE
  RETURN (body::json) ->> substr(path, 3);
