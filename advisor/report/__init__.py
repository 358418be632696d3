"""What people and programs read: advice, plan and reasons, as lines of text and as JSON, from the same trace."""
