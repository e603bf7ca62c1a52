"""What is kept between two requests, in SQLite or any database SQLAlchemy speaks to.

Plans and conversations expire; recipes stay until they are deleted; logs are only ever added to.
"""

from turnspit.storage.kept import KeptConversation, KeptLog, KeptPlan, KeptRecipe
from turnspit.storage.place import default_url
from turnspit.storage.store import Store, open_store

__all__ = ["KeptConversation", "KeptLog", "KeptPlan", "KeptRecipe", "Store", "default_url", "open_store"]
