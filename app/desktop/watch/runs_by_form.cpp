// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/watch/runs_by_form.h"

#include "app/desktop/look/said.h"
#include "app/desktop/recordings/gate_row.h"
#include "app/wording/instruments.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>

namespace bothways::app {

using Way = core::RunsBy::Way;

RunsByForm::RunsByForm(const Language& language, QWidget* parent)
    : QWidget(parent), m_ways(new QComboBox(this)), m_gates(new GateRow(this))
{
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    auto* label = new QLabel(tr("R&uns begin and end"), this);
    label->setBuddy(m_ways);
    m_ways->setObjectName("runsBy");
    for (const Way way : {Way::hand, Way::marks, Way::position, Way::speed})
        m_ways->addItem(shown(wording::runsByWords(language, way)));
    m_gates->hideParts();
    row->addWidget(label);
    row->addWidget(m_ways);
    row->addWidget(m_gates);
    row->addStretch(1);
    connect(m_ways, &QComboBox::currentIndexChanged, this, &RunsByForm::showGates);
    showGates();
}

Way RunsByForm::way() const
{
    return static_cast<Way>(m_ways->currentIndex());
}

void RunsByForm::showGates()
{
    m_gates->setVisible(way() == Way::position);
}

void RunsByForm::setRuns(const core::RunsBy& runs)
{
    m_ways->setCurrentIndex(static_cast<int>(runs.way));
    m_gates->setFence(runs.gates);
}

core::Result<core::RunsBy> RunsByForm::runs() const
{
    core::RunsBy runs{way(), {}};
    if (runs.way != Way::position)
        return runs;
    auto fence = m_gates->fence();
    if (!fence)
        return fence.error();
    runs.gates = std::move(fence).take();
    return runs;
}

} // namespace bothways::app
