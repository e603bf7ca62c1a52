"""Answers in Spanish: nothing that looks done is told of an oven's setting or a lost reading, and the frames fit."""

from datetime import datetime
from zoneinfo import ZoneInfo

import pytest

from turnspit.asking import Line, ask

NOW = datetime(2026, 12, 24, 10, tzinfo=ZoneInfo("America/Mexico_City"))


def answer(text):
    reply, _ = ask(Line(text, NOW), None, "id")
    return reply


def told(reply):
    return "\n".join((reply.headline, *reply.lines, *reply.assumptions))


@pytest.mark.parametrize(
    ("text", "part"),
    [
        (
            "pavo relleno: 60 en la pechuga, 76 en el muslo y 75 en el relleno. ¿ya está?",
            "60 °C (140 °F) (lo más hondo",
        ),
        ("62 y 58 en la pechuga del pavo", "58 °C"),
        ("saqué el pavo hace 20 min y marca 70 en el muslo", "fuera del horno"),
        ("dejo el relleno dentro del pavo hasta mañana?", "Rellenar antes, no"),
        ("deje el pavo descongelando en el fregadero desde anoche", "No, nunca en la encimera"),
        ("horno a 180 C, a que temperatura saco el pollo", "74 °C (165 °F), medidos"),
        ("el relleno se puede preparar el dia antes", "Lo seco y lo húmedo"),
        ("cuantos grados es el gas 5", "Gas 5 ≈ 190 °C"),
        ("agua fria o refri para descongelar un pavo de 6 kg", "en el refrigerador"),
        ("dos capones de 3,5 kg congelados, como los descongelo", "2 capones de 3,5 kg"),
        ("Salmuera seca o húmeda para un pollo", "En seco es más sencillo"),
        ("Como sé cuando está listo el pernil", "Saque la pierna de cerdo fresca cuando el centro marque 63 °C"),
    ],
)
def test_the_headline_says(text, part):
    assert part in answer(text).headline


@pytest.mark.parametrize(
    "text", ["el horno esta a 180 y el pollo lleva una hora", "mi horno anda en 170 y el pato lleva 1 hora"]
)
def test_an_oven_is_no_probe(text):
    assert "ahí está listo" not in told(answer(text))


def test_who_measures_in_litres_reads_no_quarts():
    reply = told(answer("salmuera para un pavo de 6 kg en un cubo de 12 litros"))
    assert "6 L de agua" in reply
    assert "qt" not in reply
    assert "gal)" not in reply


def test_a_bird_that_gets_no_salt_has_no_weight_supposed():
    assert answer("pavo inyectado, le pongo salmuera?").assumptions == ()


def test_a_long_carving_keeps_what_is_carved_hot():
    said = told(answer("12 capones de 3 kg, servicio a las 9 de la noche"))
    assert "Trinchen entre" in said
    assert "tapado a" in said


def test_a_day_stands_in_a_sentence_with_its_article():
    assert "el domingo a las 21:00" in answer("pavo de 5 kg congelado, cena el domingo a las 21:00").headline
