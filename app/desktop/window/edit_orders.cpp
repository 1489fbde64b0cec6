// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/window/edit_orders.h"

#include "app/desktop/look/hinted_table_view.h"
#include "app/desktop/runs/run_list_view.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/window/rows_paste.h"
#include "app/desktop/window/study_jobs.h"

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QLineEdit>
#include <QTextEdit>

namespace bothways::app::edit {

void copy(StudyPage& page)
{
    QWidget* focus = QApplication::focusWidget();
    if (auto* line = qobject_cast<QLineEdit*>(focus))
        line->copy();
    else if (auto* label = qobject_cast<QLabel*>(focus); label && label->hasSelectedText())
        QGuiApplication::clipboard()->setText(label->selectedText());
    else if (auto* table = qobject_cast<HintedTableView*>(focus))
        table->copySelection();
    else if (auto* text = qobject_cast<QTextEdit*>(focus))
        text->copy();
    else
        page.list().copySelection();
}

void cut(StudyPage& page)
{
    if (auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget())) {
        line->cut();
        return;
    }
    page.list().copySelection();
    page.removeRuns();
}

void paste(StudyPage& page, StudyDocument& document, StudyJobs& jobs)
{
    if (auto* line = qobject_cast<QLineEdit*>(QApplication::focusWidget());
        line && !rowsInClipboard())
        line->paste();
    else if (page.settle())
        jobs.pasteRuns(document);
}

} // namespace bothways::app::edit
