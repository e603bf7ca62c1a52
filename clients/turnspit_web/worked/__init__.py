"""The pages that work one thing out of a form and keep nothing: one module a page, one template each."""
