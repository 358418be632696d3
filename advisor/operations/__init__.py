"""Operations: the small physical laws of the work. Only they change the garment.

Each builder answers one `Op`: what must be so before it (`expects`), what is so after it (`effects`), and the
instruction. A fix card chains them. Two fixes that need the same operation build it with the same id, and
the plan does it once; so the id says verb and key, never the fix.

    seams.py   opening, sewing, pressing any seam       waist.py   the waist seam, shared by many fixes
    levels.py  moving a waist                            one module for each kind of work beside these
"""
