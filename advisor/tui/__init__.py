"""The full-screen interface. Nothing else imports it, and only it imports Textual."""
