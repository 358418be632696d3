"""The ground the rest stands on: text gate, safe saving, names, folders, journal of unsaved answers."""

from advisor.ground.faults import AlreadyThere, ChangedOnDisk, InUse, Unconfirmed
from advisor.ground.folders import Folders, user_folders
from advisor.ground.journal import Journal, unsaved_cases
from advisor.ground.naming import check_inside, inside, new_path, safe_name
from advisor.ground.reading import SIZE_CAP, Digest, digest_of, read_bytes, read_text
from advisor.ground.saving import (
    backup,
    create_text,
    export_bytes,
    export_text,
    make_folder,
    migrate_text,
    save_text,
)
from advisor.ground.text import cells, check_text, clean, is_clean, line

__all__ = [
    "SIZE_CAP",
    "AlreadyThere",
    "ChangedOnDisk",
    "Digest",
    "Folders",
    "InUse",
    "Journal",
    "Unconfirmed",
    "backup",
    "cells",
    "check_inside",
    "check_text",
    "clean",
    "create_text",
    "digest_of",
    "export_bytes",
    "export_text",
    "inside",
    "is_clean",
    "line",
    "make_folder",
    "migrate_text",
    "new_path",
    "read_bytes",
    "read_text",
    "safe_name",
    "save_text",
    "unsaved_cases",
    "user_folders",
]
