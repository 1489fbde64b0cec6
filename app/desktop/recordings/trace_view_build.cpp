// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/trace_scatter.h"
#include "app/desktop/recordings/trace_view.h"

#include <QComboBox>
#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QShortcut>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

// Widgets of the trace view, their connections and their texts.
#include <utility>

namespace bothways::app {

TraceView::TraceView(QWidget* parent) : QWidget(parent)
{
    build();
    connect(m_runList, &QListWidget::itemChanged, this, [this] {
        if (!m_filling)
            tickUsualChannels();
        refresh();
        refreshScatter();
        if (!m_filling)
            emit shownRunsChanged();
    });
    connect(m_channelList, &QListWidget::itemChanged, this, [this] {
        m_channelsChosen = m_channelsChosen || !m_filling;
        refresh();
    });
    connect(m_runList, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
        emit runActivated(item->data(Qt::UserRole).toInt());
    });
    connect(m_axisBox, &QComboBox::currentIndexChanged, this,
            [this](int i) { setAxis(i == 0 ? TraceAxis::time : TraceAxis::distance); });
    connect(m_previous, &QPushButton::clicked, this, [this] { goToFinding(-1); });
    connect(m_next, &QPushButton::clicked, this, [this] { goToFinding(1); });
    connect(m_all, &QPushButton::clicked, m_plot, &PlotView::showWhole);
    connect(m_plot, &TracePlot::bandActivated, this, [this](int key) {
        emit findingActivated(m_shownFindings[static_cast<std::size_t>(key)]);
    });
    connect(m_plot, &PlotView::readingActivated, this, [this](int key) {
        emit findingActivated(m_shownFindings[static_cast<std::size_t>(key)]);
    });
    for (const auto& [key, step] :
         {std::pair(Qt::Key_PageUp, -1), std::pair(Qt::Key_PageDown, 1)}) {
        auto* shortcut = new QShortcut(QKeySequence(Qt::CTRL | key), this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, [this, way = step] { goToFinding(way); });
    }
    for (QComboBox* box : {m_across, m_up})
        connect(box, &QComboBox::currentIndexChanged, this, &TraceView::refreshScatter);
    connect(m_tabs, &QTabWidget::currentChanged, this, &TraceView::refreshScatter);
    m_splitter->hide();
}

TraceView::~TraceView() = default;

void TraceView::build()
{
    m_nothing = new QLabel;
    m_nothing->setAlignment(Qt::AlignCenter);
    m_nothing->setWordWrap(true);
    m_runList = new QListWidget;
    m_runList->setObjectName(QStringLiteral("traceRuns"));
    m_channelList = new QListWidget;
    m_channelList->setObjectName(QStringLiteral("traceChannels"));
    for (QListWidget* list : {m_runList, m_channelList}) { // long names go on below
        list->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        list->setWordWrap(true);
        list->setTextElideMode(Qt::ElideNone);
        list->setResizeMode(QListView::Adjust);
    }
    m_runsLabel = new QLabel;
    m_runsLabel->setBuddy(m_runList);
    m_channelsLabel = new QLabel;
    m_channelsLabel->setBuddy(m_channelList);
    m_plot = new TracePlot;
    m_plot->setObjectName(QStringLiteral("tracePlot"));
    m_scatter = new TraceScatter;
    m_scatter->setObjectName(QStringLiteral("traceScatter"));
    m_scatter->setAccessibleName(tr("One channel against another"));
    m_axisBox = new QComboBox;
    m_axisBox->setObjectName(QStringLiteral("traceAxis"));
    m_axisBox->addItems({QString(), QString()});
    m_axisBox->setSizeAdjustPolicy(QComboBox::AdjustToContents); // the texts come later
    m_axisBox->setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
    m_previous = new QPushButton;
    m_previous->setObjectName(QStringLiteral("previousFinding"));
    m_next = new QPushButton;
    m_next->setObjectName(QStringLiteral("nextFinding"));
    m_all = new QPushButton;
    m_across = new QComboBox;
    m_across->setObjectName(QStringLiteral("scatterAcross"));
    m_up = new QComboBox;
    m_up->setObjectName(QStringLiteral("scatterUp"));
    m_againstLabel = new QLabel;

    auto* lists = buildLists();
    m_tabs = new QTabWidget;
    m_tabs->addTab(buildOverTime(), QString());
    m_tabs->addTab(buildAgainst(), QString());
    m_splitter = new QSplitter;
    m_splitter->addWidget(lists);
    m_splitter->addWidget(m_tabs);
    m_splitter->setStretchFactor(1, 1);
    m_splitter->setSizes({150, 800});
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(10, 10, 10, 10);
    column->addWidget(m_nothing);
    column->addWidget(m_splitter, 1);
    QEvent language(QEvent::LanguageChange);
    changeEvent(&language);
}

QWidget* TraceView::buildLists()
{
    auto* lists = new QWidget;
    auto* listColumn = new QVBoxLayout(lists);
    listColumn->setContentsMargins(0, 0, 0, 0);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_runsLabel, m_runList, m_channelsLabel, m_channelList})
        listColumn->addWidget(widget);
    return lists;
}

QWidget* TraceView::buildOverTime()
{
    auto* overTime = new QWidget;
    auto* timeColumn = new QVBoxLayout(overTime);
    auto* tools = new QHBoxLayout;
    for (QWidget* widget : std::initializer_list<QWidget*>{m_axisBox, m_previous, m_next, m_all})
        tools->addWidget(widget);
    tools->addStretch();
    timeColumn->addLayout(tools);
    timeColumn->addWidget(m_plot, 1);
    return overTime;
}

QWidget* TraceView::buildAgainst()
{
    auto* against = new QWidget;
    auto* againstColumn = new QVBoxLayout(against);
    auto* choice = new QHBoxLayout;
    for (QWidget* widget : std::initializer_list<QWidget*>{m_up, m_againstLabel, m_across})
        choice->addWidget(widget);
    choice->addStretch();
    againstColumn->addLayout(choice);
    againstColumn->addWidget(m_scatter, 1);
    return against;
}

void TraceView::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange) {
        m_nothing->setText(tr("No run has a recording yet. Import one to look at it here."));
        m_runsLabel->setText(tr("&Runs"));
        m_channelsLabel->setText(tr("C&hannels"));
        for (const auto& [list, label] :
             {std::pair(m_runList, m_runsLabel), std::pair(m_channelList, m_channelsLabel)})
            list->setAccessibleName(label->text().remove(u'&')); // a label that is hidden says none
        m_axisBox->setItemText(0, tr("by time"));
        m_axisBox->setItemText(1, tr("by distance"));
        m_axisBox->setAccessibleName(tr("What the runs are laid along"));
        m_previous->setText(tr("◀ finding"));
        m_previous->setAccessibleName(tr("Previous finding"));
        m_next->setText(tr("finding ▶"));
        m_next->setAccessibleName(tr("Next finding"));
        m_previous->setToolTip(tr("Previous finding (Ctrl+Page Up)"));
        m_next->setToolTip(tr("Next finding (Ctrl+Page Down)"));
        m_all->setText(tr("Show all"));
        //: one channel against another
        m_againstLabel->setText(tr("against"));
        m_across->setAccessibleName(tr("Channel across"));
        m_up->setAccessibleName(tr("Channel up"));
        m_tabs->setTabText(0, tr("Over the run"));
        m_tabs->setTabText(1, tr("Channel against channel"));
        if (!m_runs.empty())
            refresh();
    }
    QWidget::changeEvent(event);
}

} // namespace bothways::app
