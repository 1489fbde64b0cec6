// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/findings/not_checked_dialog.h"

#include "app/desktop/look/help_topics.h"
#include "app/desktop/look/page_parts.h"
#include "app/desktop/look/words.h"
#include "app/wording/runs.h"

#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLabel>
#include <QTableWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <map>

namespace bothways::app {

QString runRanges(std::vector<int> runs)
{
    std::sort(runs.begin(), runs.end());
    return QString::fromStdString(wording::runList(std::move(runs)));
}

NotCheckedDialog::NotCheckedDialog(const std::vector<core::NotChecked>& list,
                                   const UnitsShown& units, QWidget* parent)
    : QDialog(parent)
{
    setObjectName("notCheckedDialog");
    setAttribute(Qt::WA_DeleteOnClose);
    setWindowTitle(tr("Not checked"));
    const Language& in = units.language;
    std::map<std::pair<QString, QString>, std::vector<int>> runs;
    std::map<QString, QString> topics;
    for (core::NotChecked missing : list) {
        if (missing.why == core::WhyNotChecked::noLimit)
            missing.what.clear(); // its name is for who sets it by that
        const QString rule = shown(wording::ruleName(in, missing.rule));
        runs[{rule, shown(wording::whyNotChecked(in, missing))}].push_back(missing.run);
        topics[rule] = helpTopic(missing.rule);
    }

    auto* box = new QVBoxLayout(this);
    auto* top = new QLabel(tr("What a rule could not look at, it has not passed."), this);
    box->addWidget(top);
    auto* table = new QTableWidget(static_cast<int>(runs.size()), 3, this);
    parts::dress(*table, "notCheckedList", windowTitle());
    parts::setLowRows(*table);
    table->setHorizontalHeaderLabels({tr("Rule"), tr("Why"), tr("Runs")});
    int row = 0;
    for (const auto& [what, numbers] : runs) {
        table->setItem(row, 0, new QTableWidgetItem(what.first));
        table->setItem(row, 1, new QTableWidgetItem(what.second));
        table->setItem(row, 2, new QTableWidgetItem(runRanges(numbers)));
        ++row;
    }
    connect(table, &QTableWidget::currentCellChanged, this, [table, topics](int current) {
        const QTableWidgetItem* rule = table->item(current, 0);
        const auto topic = rule ? topics.find(rule->text()) : topics.end();
        setHelpTopic(*table, topic == topics.end() ? QString() : topic->second);
    });
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
    box->addWidget(table);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close | QDialogButtonBox::Help, this);
    connect(buttons, &QDialogButtonBox::helpRequested, table, [table] { askForHelp(*table); });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    box->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 110, fontMetrics().height() * 24);
}

} // namespace bothways::app
