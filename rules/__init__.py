"""The rule base. Installed as `advisor.rules`; never imported under another name, or every card would exist twice."""

if __name__ != "advisor.rules":
    raise ImportError("the rule base is part of the advisor: import advisor.rules, or nothing")
