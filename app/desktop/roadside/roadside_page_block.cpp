// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/look/big_label.h"
#include "app/desktop/look/preferences.h"
#include "app/desktop/look/said.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/roadside/roadside_words.h"
#include "app/wording/runs.h"

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

/// What the page asks once a block, one large question after the other: walk-round and weather.
namespace bothways::app {
namespace {

constexpr int kBlockGap = 8;
constexpr RunField kWeatherAsked[] = {RunField::temperature, RunField::wind, RunField::windFrom,
                                      RunField::pressure, RunField::humidity};

} // namespace

/// What is said beside Start, and below it the two buttons.
QLayout* RoadsidePage::buildOnceABlock(QWidget* page)
{
    auto* box = new QVBoxLayout;
    auto* buttons = new QHBoxLayout;
    const auto group = std::make_shared<std::vector<BigButton*>>();
    for (QBoxLayout* layout : {static_cast<QBoxLayout*>(box), static_cast<QBoxLayout*>(buttons)}) {
        layout->setContentsMargins(0, 0, 0, 0);
        layout->setSpacing(kBlockGap);
    }
    const auto add = [&](const char* name, Qt::Key key, const std::function<void()>& job) {
        BigButton* made = button(BigButton::Kind::plain, name, key, page, job);
        made->setMost(0.05);
        made->setGroup(group);
        buttons->addWidget(made, 1);
    };
    add("walkRound", Qt::Key_W, [this] { walkRound(); });
    add("weather", Qt::Key_K, [this] { askWeather(); });
    box->addWidget(m_below, 62);
    box->addLayout(buttons, 38);
    return box;
}

void RoadsidePage::refreshOnceABlock()
{
    BigButton* walk = find("walkRound");
    walk->setVisible(!m_document.study().properties.walk_round.empty());
    walk->setWords(tr("Walk-round"));
    walk->setKind(m_session.isWalkRoundDue() ? BigButton::Kind::primary : BigButton::Kind::plain);
    BigButton* weather = find("weather");
    weather->setWords(tr("Weather"));
    weather->setKind(m_session.isWeatherDue() ? BigButton::Kind::primary : BigButton::Kind::plain);
}

void RoadsidePage::askInTurn(std::vector<std::function<void()>> questions,
                             std::function<void()> end)
{
    std::reverse(questions.begin(), questions.end());
    m_inTurn = std::move(questions);
    m_afterTurn = std::move(end);
    askNextInTurn();
}

void RoadsidePage::askNextInTurn()
{
    if (m_inTurn.empty()) {
        const auto end = std::exchange(m_afterTurn, nullptr);
        end();
        return;
    }
    const auto question = std::move(m_inTurn.back());
    m_inTurn.pop_back();
    question();
}

void RoadsidePage::walkRound()
{
    m_walk = m_session.blankWalkRound();
    std::vector<std::function<void()>> questions(m_walk.ticks.size(), [this] { askWalkLine(); });
    askInTurn(std::move(questions), [this] { endWalkRound(); });
}

/// The one that is next, counted from those that are left.
void RoadsidePage::askWalkLine()
{
    const std::size_t place = m_walk.ticks.size() - m_inTurn.size() - 1;
    const core::WalkTick& line = m_walk.ticks[place];
    const QString number = QString::number(place + 1);
    const QString all = QString::number(m_walk.ticks.size());
    const QString words = nameShown(line.words); // in one step: it may hold a "%4" of its own
    if (!line.unit.empty()) {
        askWords(tr("Walk-round, %1 of %2: %3, in %4? Nothing typed: it stays open.")
                     .arg(number, all, words, nameShown(line.unit)),
                 {}, [this, place](const QString& text) {
                     core::WalkTick& tick = m_walk.ticks[place];
                     if (text.trimmed().isEmpty())
                         return QString();
                     const auto typed = UnitsShown::parseNumber(text);
                     if (!typed)
                         return tr("“%1” is no number.").arg(text.trimmed());
                     tick.ticked = true;
                     tick.number = typed->value;
                     return QString();
                 });
        return;
    }
    const auto answer = [this, place](bool isInOrder) {
        return [this, place, isInOrder] {
            m_walk.ticks[place].ticked = isInOrder;
            askNextInTurn();
        };
    };
    ask(tr("Walk-round, %1 of %2: %3. In order?").arg(number, all, words),
        {{tr("In order"), Qt::Key_Y, answer(true)},
         {tr("It stays open"), Qt::Key_N, answer(false)}});
}

void RoadsidePage::endWalkRound()
{
    const core::WalkRound made = m_walk;
    const QString refusal = m_session.noteWalkRound(made);
    if (refusal.isEmpty()) {
        m_said = asSentence(shown(wording::walkRoundMade(m_preferences.spoken(), made)));
        for (const QString& sentence : m_session.walkDifferences())
            m_said += u' ' + sentence;
    }
    refresh();
    if (!refusal.isEmpty() || !m_session.walkDifferences().isEmpty()) {
        setNotice(refusal.isEmpty() ? m_said : refusal, true);
        m_refused = true; // it stays until the next press
    }
}

void RoadsidePage::askWeather()
{
    const UnitsShown units = m_preferences.units();
    std::vector<std::function<void()>> questions;
    for (const RunField field : kWeatherAsked)
        questions.push_back([this, field, units, place = questions.size() + 1] {
            askWords(tr("Weather of this block, %1 of %2: %3, in %4? Nothing typed: not known.")
                         .arg(place)
                         .arg(std::size(kWeatherAsked))
                         .arg(fieldTitle(field), fieldUnit(field, units)),
                     m_session.weatherText(field), [this, field](const QString& text) {
                         return m_session.noteWeather(field, text);
                     });
        });
    askInTurn(std::move(questions), [this] {
        m_said = tr("The weather goes into run %1.").arg(m_session.number());
        refresh();
    });
}

} // namespace bothways::app
