// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/keys_dialog.h"

#include "app/desktop/look/page_parts.h"

#include <QAction>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QMenu>
#include <QMenuBar>
#include <QTableWidget>
#include <QVBoxLayout>

namespace bothways::app {
namespace {

/// The platform's keys, which everyone knows.
bool isKnown(const QAction& action)
{
    return action.objectName() == "undo" || action.objectName() == "redo";
}

void addKeys(QTableWidget& table, const QMenu& menu, const QString& title)
{
    for (const QAction* action : menu.actions()) {
        if (action->menu())
            addKeys(table, *action->menu(), title);
        if (action->shortcuts().isEmpty() || isKnown(*action))
            continue;
        const int row = table.rowCount();
        table.insertRow(row);
        table.setItem(row, 0, new QTableWidgetItem(title));
        table.setItem(row, 1, new QTableWidgetItem(action->text().remove(u'&')));
        table.setItem(row, 2,
                      new QTableWidgetItem(QKeySequence::listToString(action->shortcuts(),
                                                                      QKeySequence::NativeText)));
    }
}

} // namespace

KeysDialog::KeysDialog(const QMenuBar& menus, QWidget* parent) : QDialog(parent)
{
    setObjectName("keysDialog");
    setWindowTitle(tr("Keys"));
    setAttribute(Qt::WA_DeleteOnClose);
    auto* table = new QTableWidget(0, 3, this);
    parts::dress(*table, "keysList", windowTitle());
    table->setHorizontalHeaderLabels({tr("Menu"), tr("What"), tr("Key")});
    for (const QAction* top : menus.actions())
        if (top->menu())
            addKeys(*table, *top->menu(), top->text().remove(u'&'));
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    table->horizontalHeader()->setSectionResizeMode(1, QHeaderView::Stretch);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::close);
    auto* box = new QVBoxLayout(this);
    box->addWidget(table);
    box->addWidget(buttons);
    resize(560, 560);
}

} // namespace bothways::app
