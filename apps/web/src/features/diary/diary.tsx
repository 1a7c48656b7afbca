const Diary = () => null;

export default Diary;
