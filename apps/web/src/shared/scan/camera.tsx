import { Button } from '@mantine/core';
import { useEffect, useRef, useState } from 'react';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import wasmUrl from 'zxing-wasm/reader/zxing_reader.wasm?url';
import { Dialog } from '../kit/dialog';
import { useMessages } from '../language/catalogue';
import { scanMessages } from './messages';

// The reader is served by the workshop's own service: nothing is fetched from elsewhere.
prepareZXingModule({ overrides: { locateFile: () => wasmUrl } });

const LOOK_EVERY_MS = 180;

const look = async (video: HTMLVideoElement, canvas: HTMLCanvasElement) => {
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (pen === null || video.videoWidth === 0) return undefined;
  canvas.width = video.videoWidth;
  canvas.height = video.videoHeight;
  pen.drawImage(video, 0, 0);
  const found = await readBarcodes(pen.getImageData(0, 0, canvas.width, canvas.height), {
    formats: ['QRCode', 'DataMatrix', 'Code128', 'EAN13', 'EAN8', 'UPCA', 'ITF'],
    tryHarder: true,
    maxNumberOfSymbols: 1,
  });
  return found.find((code) => code.isValid)?.text;
};

/** Reads one code with the camera and closes. */
const Camera = (props: {
  readonly onRead: (text: string) => void;
  readonly onClose: () => void;
}) => {
  const t = useMessages(scanMessages);
  const video = useRef<HTMLVideoElement>(null);
  const [fault, setFault] = useState<string>();
  const { onRead } = props;
  useEffect(() => {
    const canvas = document.createElement('canvas');
    let stream: MediaStream | undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let ended = false;
    const turn = async (): Promise<void> => {
      const text = video.current === null ? undefined : await look(video.current, canvas);
      if (ended) return;
      if (text !== undefined) onRead(text);
      else timer = setTimeout(() => void turn(), LOOK_EVERY_MS);
    };
    const start = async (): Promise<void> => {
      stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
      if (video.current === null || ended) return;
      video.current.srcObject = stream;
      await video.current.play();
      await turn();
    };
    start().catch((cause: unknown) => setFault(cause instanceof Error ? cause.message : ''));
    return () => {
      ended = true;
      clearTimeout(timer);
      stream?.getTracks().forEach((track) => track.stop());
    };
  }, [onRead]);
  return (
    <Dialog onClose={props.onClose} title={t('camera')} fullScreen>
      {fault === undefined ? (
        <p>{t('aim')}</p>
      ) : (
        <p role="alert">{t('noCamera', { reason: fault })}</p>
      )}
      <video ref={video} className="camera" muted playsInline aria-label={t('view')} />
      <Button onClick={props.onClose} variant="default">
        {t('close')}
      </Button>
    </Dialog>
  );
};

export default Camera;
