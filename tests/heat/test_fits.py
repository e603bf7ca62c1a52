"""The named fits of the turkey are what fitting gives, and say what they were fitted on."""

import pytest

from turnspit.heat.fits import main, refit, turkey_fits, turkey_rows


@pytest.mark.parametrize("name", sorted(turkey_fits()))
def test_fitting_again_gives_the_stored_lengths(name: str) -> None:
    stored = turkey_fits()[name]
    again = refit(stored)
    assert again.radius_m == pytest.approx(stored.radius_m, rel=0.003)
    assert again.mass_power == pytest.approx(stored.mass_power, abs=0.003)
    assert again.stuffing_m == pytest.approx(stored.stuffing_m, rel=0.003)


def test_the_two_table_fits_share_no_row() -> None:
    fits = turkey_fits()
    assert not set(fits["A"].fitted_on) & set(fits["A'"].fitted_on)
    assert set(fits["A"].fitted_on) | set(fits["A'"].fitted_on) == {
        name for name in turkey_rows() if name.endswith(("lb", "lb-stuffed"))
    }


def test_the_table_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    main()
    printed = capsys.readouterr().out
    assert "set A:" in printed
    assert "turkey-10.4kg" in printed
