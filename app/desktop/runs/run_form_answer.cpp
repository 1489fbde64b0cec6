// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/runs/run_form.h"

#include "app/desktop/document/study_document.h"
#include "app/desktop/look/preferences.h"
#include "core/recording/trace_consumption.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QShortcut>

/// A consumption that is far off is saved only with an answer.
namespace bothways::app {

void RunForm::buildAnswer()
{
    m_answer = new QWidget(this);
    auto* box = new QHBoxLayout(m_answer);
    box->setContentsMargins(0, 2, 0, 2);
    m_take = new QPushButton(m_answer);
    m_take->setObjectName("takeLikely");
    m_keep = new QPushButton(m_answer);
    m_keep->setObjectName("keepTyped");
    for (QPushButton* button : {m_take, m_keep}) {
        button->setAutoDefault(false); // Enter is no answer
        box->addWidget(button);
    }
    box->addStretch(1);
    m_answer->hide();
    const auto press = [this](QPushButton* button, const QString& key, void (RunForm::*job)()) {
        connect(button, &QPushButton::clicked, this, job);
        connect(new QShortcut(QKeySequence(key), button), &QShortcut::activated, this, job);
    };
    press(m_take, tr("Alt+T", "the key that takes what was meant"), &RunForm::takeLikely);
    press(m_keep, tr("Alt+K", "the key that keeps what was typed"), &RunForm::keepTyped);
}

Sight RunForm::sight() const
{
    return m_document.isBlind() ? Sight::typed : Sight::open;
}

std::optional<Question> RunForm::unanswered(const core::Run& run) const
{
    const bool same = !m_isNew && run.consumption == m_run.consumption;
    if (!run.consumption || run.consumption == m_kept || same)
        return std::nullopt;
    return consumptionQuestion(m_document.study(), run,
                               m_preferences.units(m_document.isElectric()), sight());
}

/// Which answers there are. The keys stand in the words: nobody has to guess them.
void RunForm::showAnswer(const core::Run& run, const std::optional<Question>& question)
{
    m_typed = question ? run.consumption : std::nullopt;
    m_likely = question ? question->likely : std::nullopt;
    m_answer->setVisible(question.has_value());
    m_take->setVisible(m_likely.has_value());
    if (!question)
        return;
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    const auto dress = [](QPushButton* button, const QString& words) {
        const auto* key = button->findChild<QShortcut*>();
        //: what a button does, and the key that does it
        button->setText(tr("%1 (%2)").arg(words, key->key().toString(QKeySequence::NativeText)));
        button->setAccessibleName(words);
    };
    if (m_likely)
        dress(m_take, tr("Take %1").arg(shortly(*m_likely, m_typed->unit, units)));
    dress(m_keep, tr("Keep %1").arg(shortly(*m_typed, m_typed->unit, units)));
}

void RunForm::takeLikely()
{
    if (m_likely)
        answered(core::Consumption(*m_likely));
}

void RunForm::keepTyped()
{
    if (m_typed)
        answered(core::Consumption(*m_typed));
}

void RunForm::answered(const core::Consumption& with)
{
    m_kept = with;
    showTyped(with);
    if (m_isNew)
        save();
    else
        commitEdit(RunField::consumption);
}

/// Another run is shown, or the panel closes: what was not answered is not written, and that is
/// said.
void RunForm::leaveUnanswered()
{
    if (m_isNew || !m_typed)
        return;
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    const QString typed = asGiven(*m_typed, units);
    m_typed.reset();
    m_likely.reset();
    emit notConfirmed(tr("Run %1 keeps the consumption it had: %2 was not confirmed.")
                          .arg(m_run.number)
                          .arg(typed));
}

void RunForm::showTyped(const core::Consumption& typed)
{
    const UnitsShown units = m_preferences.units(m_document.isElectric());
    m_filling = true;
    setUnit(typed.unit);
    line(RunField::consumption)->setText(units.number(typed.value, core::shownDecimals(typed)));
    line(RunField::consumption)->setModified(true);
    m_filling = false;
    review();
}

void RunForm::askAbout(core::RunId id, const core::Consumption& typed)
{
    editRun(id, RunField::consumption);
    showTyped(typed);
    line(RunField::consumption)->selectAll();
}

} // namespace bothways::app
