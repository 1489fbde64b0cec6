// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/desktop/support/everything_said.h"

#include "app/desktop/plots/plot_view.h"
#include "app/desktop/roadside/roadside_page.h"
#include "app/desktop/runs/run_form.h"
#include "app/desktop/runs/study_page.h"
#include "app/desktop/window/main_window.h"

#include <QAbstractItemView>
#include <QAccessible>
#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

namespace bothways::app::tests {
namespace {

void gather(QAccessibleInterface* part, QStringList& texts)
{
    if (!part || !part->isValid())
        return;
    for (const QAccessible::Text kind :
         {QAccessible::Name, QAccessible::Description, QAccessible::Value, QAccessible::Help})
        texts += part->text(kind);
    if (auto* text = part->textInterface())
        texts += text->text(0, text->characterCount());
    for (int i = 0; i < part->childCount(); ++i)
        gather(part->child(i), texts);
}

void gather(const QAbstractItemModel& model, QStringList& texts)
{
    const auto take = [&](const QVariant& said) {
        if (said.userType() == QMetaType::QString)
            texts += said.toString();
    };
    for (int column = 0; column < model.columnCount(); ++column)
        for (const int role : {int(Qt::DisplayRole), int(Qt::ToolTipRole)})
            take(model.headerData(column, Qt::Horizontal, role));
    for (int row = 0; row < model.rowCount(); ++row)
        for (int column = 0; column < model.columnCount(); ++column)
            for (const int role : {int(Qt::DisplayRole), int(Qt::EditRole), int(Qt::ToolTipRole),
                                   int(Qt::StatusTipRole), int(Qt::AccessibleTextRole),
                                   int(Qt::AccessibleDescriptionRole)})
                take(model.index(row, column).data(role));
}

/// What is written in a picture, and what it says of its points.
void gather(PlotView& plot, QStringList& texts)
{
    for (const Reading& reading : plot.readings())
        texts += reading.words;
    if (plot.width() < 2 || plot.height() < 2)
        return;
    QXmlStreamReader picture(plot.svg());
    while (!picture.atEnd())
        if (picture.readNext() == QXmlStreamReader::Characters)
            texts += picture.text().toString();
    EXPECT_FALSE(picture.hasError()) << picture.errorString().toStdString();
}

} // namespace

QStringList everythingSaid(QWidget& window)
{
    QStringList texts;
    gather(QAccessible::queryAccessibleInterface(&window), texts);
    QList<QWidget*> parts = window.findChildren<QWidget*>();
    parts += &window;
    for (QWidget* part : parts) {
        texts << part->windowTitle() << part->toolTip() << part->statusTip() << part->whatsThis()
              << part->accessibleName() << part->accessibleDescription();
        for (const char* property :
             {"text", "plainText", "placeholderText", "title", "specialValueText"})
            texts += part->property(property).toString();
        if (const auto* view = qobject_cast<QAbstractItemView*>(part); view && view->model())
            gather(*view->model(), texts);
        if (auto* plot = qobject_cast<PlotView*>(part))
            gather(*plot, texts);
    }
    for (const QAction* action : window.findChildren<QAction*>())
        texts << action->text() << action->toolTip() << action->statusTip();
    texts.removeAll(QString());
    texts.removeDuplicates();
    return texts;
}

void onEveryPage(MainWindow& window, const std::function<void(const QString&, QWidget&)>& look)
{
    for (const QString& page : MainWindow::pageNames()) {
        if (page == "start" || page == "help") // no study there; texts of the handbook
            continue;
        ASSERT_TRUE(window.showPage(page)) << page.toStdString();
        QCoreApplication::processEvents();
        look(page, window);
        for (QDialog* dialog : window.findChildren<QDialog*>())
            dialog->reject();
        if (RoadsidePage* roadside = window.roadside()) {
            look(page, *roadside);
            roadside->close();
        }
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        window.page()->form().dropDraft();
        window.page()->form().hide();
    }
}

} // namespace bothways::app::tests
