// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plots/plot_view.h"
#include "app/desktop/plots/svg_picture.h"

#include <QApplication>
#include <QBuffer>
#include <QClipboard>
#include <QContextMenuEvent>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QMessageBox>
#include <QMimeData>
#include <QTemporaryDir>

namespace bothways::app {
namespace {

constexpr double kPngScale = 2.0; // sharp in print and on dense screens

} // namespace

void PlotView::hideReadOffWhile(const std::function<void()>& job)
{
    const int reading = m_reading;
    m_reading = -1; // or a redraw would place it again
    const bool shown = m_label && m_label->visible();
    if (shown) {
        m_label->setVisible(false);
        m_ring->setVisible(false);
    }
    job();
    m_reading = reading;
    if (shown) {
        m_label->setVisible(true);
        m_ring->setVisible(true);
    }
    replot(QCustomPlot::rpQueuedReplot);
}

QImage PlotView::picture(double scale)
{
    QImage image;
    hideReadOffWhile([&] { image = toPixmap(width(), height(), scale).toImage(); });
    return image;
}

QByteArray PlotView::svg()
{
    SvgPicture picture(size(), m_title, m_content);
    hideReadOffWhile([&] {
        QCPPainter painter;
        painter.begin(&picture);
        painter.setMode(QCPPainter::pmVectorized);
        painter.setMode(QCPPainter::pmNoCaching);
        painter.fillRect(QRect(QPoint(0, 0), size()), m_theme.paper);
        toPainter(&painter, width(), height());
        painter.end();
    });
    return picture.document();
}

/// QCustomPlot writes its PDF into files alone.
QByteArray PlotView::pdf()
{
    const QTemporaryDir scratch;
    const QString file = scratch.filePath(QStringLiteral("plot.pdf"));
    bool done = false;
    hideReadOffWhile([&] {
        done = savePdf(file, width(), height(), QCP::epAllowCosmetic, QStringLiteral("Bothways"),
                       m_title);
    });
    QFile written(file);
    return done && written.open(QIODevice::ReadOnly) ? written.readAll() : QByteArray();
}

QString PlotView::save(const QString& file, IfThere ifThere)
{
    const QString ending = QFileInfo(file).suffix().toLower();
    QByteArray bytes;
    if (ending == QLatin1String("png")) {
        QBuffer buffer(&bytes);
        picture(kPngScale).save(&buffer, "PNG");
    } else if (ending == QLatin1String("svg")) {
        bytes = svg();
    } else if (ending == QLatin1String("pdf")) {
        bytes = pdf();
    } else if (ending == QLatin1String("csv")) {
        bytes = numbers().csv().toUtf8();
    } else {
        return tr("The file %1 needs an ending that says its kind: png, svg, pdf or csv.")
            .arg(file);
    }
    if (bytes.isEmpty())
        return tr("The file %1 cannot be written.").arg(file);
    if (const core::Outcome written = writeFile(file, bytes, {}, ifThere); !written)
        return tr("The file %1 cannot be written: %2.")
            .arg(file, whyNotWritten(Language(), written.error()));
    return {};
}

void PlotView::copyPicture()
{
    auto* copied = new QMimeData;
    copied->setImageData(picture(kPngScale));
    copied->setData(QStringLiteral("image/svg+xml"), svg());
    QApplication::clipboard()->setMimeData(copied);
}

void PlotView::copyNumbers()
{
    QApplication::clipboard()->setText(numbers().csv());
}

void PlotView::saveAs()
{
    const QStringList kinds{tr("Picture (*.png)"), tr("Drawing (*.svg)"), tr("PDF (*.pdf)"),
                            tr("Numbers (*.csv)")};
    QString chosen = kinds.front();
    QString file = QFileDialog::getSaveFileName(this, tr("Save picture or numbers"),
                                                m_title + QLatin1String(".png"),
                                                kinds.join(QLatin1String(";;")), &chosen);
    if (file.isEmpty())
        return;
    constexpr std::array kEndings{".png", ".svg", ".pdf", ".csv"};
    IfThere ifThere = IfThere::replaced;
    if (QFileInfo(file).suffix().isEmpty()) { // whose name the dialog did not ask about
        file += QLatin1String(kEndings[static_cast<std::size_t>(kinds.indexOf(chosen))]);
        ifThere = IfThere::refused;
    }
    if (const QString wrong = save(file, ifThere); !wrong.isEmpty())
        QMessageBox::warning(this, tr("Save picture or numbers"), wrong);
}

void PlotView::contextMenuEvent(QContextMenuEvent* event)
{
    QMenu menu(this);
    extendMenu(menu);
    const auto add = [&](const QString& text, const QKeySequence& key, auto job) {
        QAction* action = menu.addAction(text, this, job);
        action->setShortcut(key);
        return action;
    };
    add(tr("Copy &picture"), QKeySequence(Qt::CTRL | Qt::Key_C), [this] { copyPicture(); });
    add(tr("Copy &numbers"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_C), [this] {
        copyNumbers();
    })->setEnabled(!numbers().isEmpty());
    add(tr("&Save picture or numbers…"), {}, [this] { saveAs(); });
    menu.addSeparator();
    add(tr("Zoom &in"), QKeySequence(Qt::Key_Plus), [this] { zoom(1.25); });
    add(tr("Zoom &out"), QKeySequence(Qt::Key_Minus), [this] { zoom(0.8); });
    add(tr("Show &all"), QKeySequence(Qt::Key_0), [this] { showWhole(); })->setEnabled(isZoomed());
    menu.exec(event->globalPos());
}

} // namespace bothways::app
