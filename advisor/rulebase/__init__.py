"""The rule base: finding, reading and checking the files of rules/, and the engine built from them."""
