"""The page that names all that can be worked out."""

from __future__ import annotations

from fastapi import APIRouter, Request
from fastapi.responses import HTMLResponse, Response

from turnspit.api.readers import reader_for
from turnspit_web.rendering import Served, page

router = APIRouter(include_in_schema=False, default_response_class=HTMLResponse)


@router.get("/work")
async def work_page(request: Request, service: Served) -> Response:
    """What can be worked out, a line each."""
    return page("work.html", reader=reader_for(request, service.now()))
