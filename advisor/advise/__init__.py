"""From a case to advice: world -> findings -> options -> ranking -> choice -> plan. Data flows one way."""
